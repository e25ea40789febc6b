import type { ClassAnswer, FrostDate, PlaceAnswer } from '@neckfall/engine';
import type { Speaker } from '@neckfall/words';
import type { Frame } from '../frame.ts';
import type { PlaceFacts } from '../place-facts.ts';
import { howWeKnow } from './how-we-know.ts';
import { table } from './table.ts';
import { wrap } from './wrap.ts';

export function whereText(
  frame: Frame,
  facts: PlaceFacts,
  answer: PlaceAnswer,
  todaySentence: string,
): string {
  const { speaker, options, label } = frame;
  const { say, day, reason } = speaker;
  const best = answer.classes[0];
  return [
    wrap(headline(best, label, speaker)),
    wrap(reason(best.reason)),
    wrap(say('today.line', { date: day(options.today), sentence: todaySentence })),
    '',
    say('where.table'),
    classTable(answer.classes, speaker),
    '',
    say('where.year'),
    monthTable(facts, speaker),
    ...skyAndFrost(facts, speaker).map((line) => wrap(line)),
    '',
    howWeKnow(frame),
    '',
  ].join('\n');
}

function headline(best: ClassAnswer, place: string, { say, day, years, any }: Speaker): string {
  const { summary, verdict, gamble } = best;
  const neckFall = summary.neckFall.p50;
  const values = {
    place,
    buy: say(`buy.${best.bestStart}`, { type: say(`type.${best.type}`), date: day(summary.plan.startDay) }),
    years: years(summary.seasonShares.good),
    neckFall: neckFall === null ? '' : day(neckFall),
  };
  if (verdict === 'good') return say('where.good', values);
  if (gamble) return say('where.gamble', values);
  if (verdict === 'small') return say('where.small', values);
  return say('where.none', { place, instead: any(insteads.map((instead) => say(instead))) });
}

const insteads = ['instead.bunching', 'instead.shallots', 'instead.potato-onions', 'instead.leeks'] as const;

function classTable(classes: readonly ClassAnswer[], { say, day, years }: Speaker): string {
  const date = (value: number | null) => (value === null ? say('none') : day(value));
  return table(
    [
      { title: say('where.column.onion') },
      { title: say('where.column.start') },
      { title: say('where.column.onset') },
      { title: say('where.column.neck-fall') },
      { title: say('where.column.expect') },
    ],
    classes.map(({ type, bestStart, summary, verdict, gamble }) => [
      say(`type.${type}`),
      say('where.start', { start: say(`start.${bestStart}`), date: day(summary.plan.startDay) }),
      date(summary.onset.p50),
      date(summary.neckFall.p50),
      gamble
        ? say('where.expect-gamble', { years: years(summary.seasonShares.good) })
        : say('where.expect', {
            verdict: say(`verdict.${verdict}`),
            years: years(summary.seasonShares[verdict]),
          }),
    ]),
  );
}

const middleOfMonth = [14, 44, 73, 104, 134, 165, 195, 226, 257, 287, 318, 348];

function monthTable({ climate, months, sunUpH }: PlaceFacts, speaker: Speaker): string {
  const { say, quantity, number, dayLength } = speaker;
  const titles = ['month', 'day', 'mean', 'low', 'high', 'rain', 'wet-days', 'frost'] as const;
  return table(
    titles.map((title) => ({ title: say(`where.column.${title}`), right: title !== 'month' })),
    months.map((month) => {
      const at = month - 1;
      const half = climate.tempRangeC[at] / 2;
      return [
        speaker.month(month),
        dayLength(sunUpH[middleOfMonth[at]]),
        quantity('temperature', climate.tempMeanC[at]),
        quantity('temperature', climate.tempMeanC[at] - half),
        quantity('temperature', climate.tempMeanC[at] + half),
        quantity('rain', climate.rainMm[at]),
        number(climate.wetDays[at]),
        number(climate.frostNights[at]),
      ];
    }),
  );
}

function skyAndFrost({ sunUpH, frost }: PlaceFacts, speaker: Speaker): string[] {
  const { say, dayLength } = speaker;
  const days = say('where.longest-day', {
    longest: dayLength(Math.max(...sunUpH)),
    shortest: dayLength(Math.min(...sunUpH)),
  });
  if (frost.lastSpring.share < rareFrost) return [days, say('where.frost-never')];
  return [
    days,
    frostSentence('spring', frost.lastSpring, speaker),
    frostSentence('autumn', frost.firstAutumn, speaker),
  ];
}

/** Frost in fewer winters than this is not worth a date. */
const rareFrost = 0.05;
const usualFrost = 0.95;

function frostSentence(season: 'spring' | 'autumn', { share, days }: FrostDate, speaker: Speaker): string {
  const { say, dayOfYear, dayOfYearRange, years } = speaker;
  if (days === null) return say('where.frost-never');
  // climate days count from 0
  const values = {
    date: dayOfYear(days.p50 + 1),
    range: say('range.8-in-10', { range: dayOfYearRange(days.p10 + 1, days.p90 + 1) }),
    years: years(share),
  };
  return say(share < usualFrost ? `where.frost-${season}-some` : `where.frost-${season}`, values);
}
