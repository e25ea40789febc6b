import { saltSentence, waterCautions, waterRows, waterSentences } from '@neckfall/answers';
import type { TendedCrop, WaterAnswer, WaterDay } from '@neckfall/engine';
import type { Speaker } from '@neckfall/words';
import type { Frame } from '../frame/frame.ts';
import { howWeKnow } from './how-we-know.ts';
import { table } from './table.ts';
import { wrap } from './wrap.ts';

export function waterText(frame: Frame, crop: TendedCrop, water: WaterAnswer): string {
  const { speaker } = frame;
  const { say } = speaker;
  const sections = [
    waterSentences(water, crop, speaker)
      .map((sentence) => wrap(sentence))
      .join('\n'),
  ];
  const rows = waterRows(water, crop.ground.areaM2, speaker);
  if (rows.length > 0)
    sections.push(
      `${say('watering.table')}\n${seasonTable(rows, speaker)}\n${wrap(say('watering.dry-year'))}`,
    );
  const salt = saltSentence(water, speaker);
  if (salt !== null) sections.push(wrap(salt));
  if (water.days.length > 0) sections.push(`${say('watering.days')}\n${weekTable(water.days, speaker)}`);
  sections.push(
    [say('app.cautions'), ...waterCautions(speaker).map((caution) => `  ${wrap(caution, 2)}`)].join('\n'),
  );
  sections.push(howWeKnow(frame, null, null));
  return `${sections.join('\n\n')}\n`;
}

function seasonTable(rows: ReturnType<typeof waterRows>, { say }: Speaker): string {
  return table(
    [{ title: '' }, { title: say('watering.column.ordinary') }, { title: say('watering.column.dry') }],
    rows.map(({ title, ordinary, dry }) => [title, ordinary, dry]),
  );
}

const weekDays = 7;

/** By weeks on paper; `--json` and `--csv` have every day. */
function weekTable(days: readonly WaterDay[], { say, day, quantity }: Speaker): string {
  const titles = ['from', 'rain', 'given', 'short'] as const;
  const weeks = Array.from({ length: Math.ceil(days.length / weekDays) }, (_, week) =>
    days.slice(week * weekDays, (week + 1) * weekDays),
  );
  const sum = (week: readonly WaterDay[], of: 'rainMm' | 'givenMm') =>
    week.reduce((total, one) => total + one[of], 0);
  return table(
    titles.map((title) => ({ title: say(`watering.day.${title}`), right: title !== 'from' })),
    weeks.map((week) => [
      day(week[0].day),
      quantity('rain', sum(week, 'rainMm')),
      quantity('rain', sum(week, 'givenMm')),
      quantity('rain', week[week.length - 1].depletionMm),
    ]),
  );
}
