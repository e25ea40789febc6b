import { bestStart, runsAlike, spanSentence, whenHeadline } from '@neckfall/answers';
import { type DayNumber, dayInYear, type StartTrial, type WhenAnswer } from '@neckfall/engine';
import type { Speaker } from '@neckfall/words';
import type { Frame } from '../frame/frame.ts';
import { howWeKnow } from './how-we-know.ts';
import { table } from './table.ts';
import { wrap } from './wrap.ts';

export function whenText(frame: Frame, answer: WhenAnswer, cultivar: string | null): string {
  const { speaker, label } = frame;
  const best = bestStart(answer);
  return [
    wrap(whenHeadline(answer, cultivar, label, speaker)),
    wrap(speaker.reason(answer.reason)),
    '',
    speaker.say('when.table'),
    weekTable(answer.starts, speaker),
    '',
    howWeKnow(frame, best?.plan ?? null, best && spanSentence(best, 'best-start', speaker)),
    '',
  ].join('\n');
}

/** Any year: rows of starts that come round this year and next are told as of one. */
const toldYear = 2027;

/** Tops go over so long after the start, as a date of the year told. */
function fallInYear({ dayOfYear, summary }: StartTrial): DayNumber | null {
  const { neckFall, plan } = summary;
  return neckFall.days ? dayInYear(toldYear, dayOfYear) + neckFall.days.p50 - plan.startDay : null;
}

/** Weeks next to each other that come out alike share a line. */
function weekTable(starts: readonly StartTrial[], speaker: Speaker): string {
  const { say, dayOfYearRange, numberRange, quantity } = speaker;
  const titles = ['weeks', 'comes', 'good', 'neck-fall', 'diameter'] as const;
  return table(
    titles.map((title) => ({ title: say(`when.column.${title}`) })),
    runsAlike(starts).map((run) => {
      const { hindrance, summary: first } = run[0];
      const weeks = dayOfYearRange(run[0].dayOfYear, run[run.length - 1].dayOfYear);
      if (hindrance !== null) return [weeks, say(`when.${hindrance}`), '', '', ''];
      const good = run.map(({ summary }) => 10 * summary.seasonShares.good);
      const falls = run.map(fallInYear).filter((day) => day !== null);
      const sizes = run.flatMap(({ summary }) => summary.bulbDiameterMm?.p50 ?? []);
      return [
        weeks,
        first.gamble ? say('when.gamble') : say(`verdict.${first.outcome}`),
        say('when.good-years', { range: numberRange(Math.min(...good), Math.max(...good)) }),
        falls.length > 0 ? speaker.dayRange(Math.min(...falls), Math.max(...falls)) : say('none'),
        sizes.length > 0
          ? Math.min(...sizes) === Math.max(...sizes)
            ? quantity('bulbLength', sizes[0])
            : speaker.quantityRange('bulbLength', Math.min(...sizes), Math.max(...sizes))
          : say('none'),
      ];
    }),
  );
}
