import {
  leafCheckSentence,
  plantSpreadSentence,
  seasonHeadline,
  seasonRows,
  sharesSentence,
  spanPartsSentence,
} from '@neckfall/answers';
import type { DayRow, SeasonSummary } from '@neckfall/engine';
import type { Speaker } from '@neckfall/words';
import type { SeasonChecks } from '../documents/season-document.ts';
import type { Frame } from '../frame/frame.ts';
import { howWeKnow } from './how-we-know.ts';
import { table } from './table.ts';
import { wrap } from './wrap.ts';

export function seasonText(
  frame: Frame,
  summary: SeasonSummary,
  cultivar: string | null,
  days: DayRow[] | null,
  { spans, leafCheckpoint }: SeasonChecks,
  seen: readonly string[],
): string {
  const { speaker, label } = frame;
  const { say, reason } = speaker;
  const sections = [
    `${wrap(seasonHeadline(summary, cultivar, label, speaker))}\n${wrap(reason(summary.reason))}`,
    ...(seen.length === 0 ? [] : [seen.map((sentence) => wrap(sentence)).join('\n')]),
    `${say('season.table')}\n${expectations(summary, speaker)}\n${wrap(sharesSentence(summary, speaker))}`,
  ];
  const spread = plantSpreadSentence(summary, speaker);
  if (spread !== null) sections[sections.length - 1] += `\n${wrap(spread)}`;
  if (leafCheckpoint) sections.push(wrap(leafCheckSentence(leafCheckpoint, speaker)));
  if (days) sections.push(`${say('season.days')}\n${dayTable(days, speaker)}`);
  sections.push(howWeKnow(frame, summary.plan, spanPartsSentence(summary, spans, speaker)));
  return `${sections.join('\n\n')}\n`;
}

function expectations(summary: SeasonSummary, speaker: Speaker): string {
  const { say } = speaker;
  return table(
    [{ title: '' }, { title: say('season.column.likely') }, { title: say('season.column.range') }],
    seasonRows(summary, speaker).map(({ title, middle, range }) => [title, middle, range]),
  );
}

const everyDays = 7;

/** A week apart on paper; `--json` and `--csv` have every day. */
function dayTable(days: readonly DayRow[], speaker: Speaker): string {
  const { say, day, number, quantity, dayLength } = speaker;
  const titles = ['date', 'sun-up', 'mean', 'leaves', 'bulb'] as const;
  return table(
    titles.map((title) => ({ title: say(`season.day.${title}`), right: title !== 'date' })),
    days
      .filter((_, at) => at % everyDays === 0 || at === days.length - 1)
      .map((row) => [
        day(row.day),
        dayLength(row.sunUpH),
        quantity('temperature', row.tempMeanC),
        number(row.leavesGreen),
        quantity('bulbMass', row.bulbG),
      ]),
  );
}
