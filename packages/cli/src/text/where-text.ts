import {
  bestOfYearSentence,
  betterThanLead,
  comingDay,
  monthsOf,
  namedOf,
  type PlaceFacts,
  skyAndFrost,
  spanSentence,
  whereHeadline,
} from '@neckfall/answers';
import type { ClassAnswer, DateSpread, PlaceAnswer } from '@neckfall/engine';
import type { Speaker } from '@neckfall/words';
import type { Frame } from '../frame/frame.ts';
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
  const [lead] = answer.classes;
  const advice = { lead, better: betterThanLead(answer.classes), now: answer.now };
  const named = namedOf(advice);
  const bestOfYear = bestOfYearSentence(advice, options.today, speaker);
  return [
    wrap(whereHeadline(advice, label, options.today, speaker)),
    wrap(reason(named.summary.reason)),
    ...(bestOfYear === null ? [] : [wrap(bestOfYear)]),
    wrap(say('today.line', { date: day(options.today), sentence: todaySentence })),
    '',
    say('where.table'),
    classTable(answer.classes, options.today, speaker),
    ...(answer.classes.every(({ isAtHome }) => isAtHome) ? [] : [wrap(say('where.far'))]),
    '',
    say('where.year'),
    monthTable(facts, speaker),
    ...skyAndFrost(facts, speaker).map((line) => wrap(line)),
    '',
    howWeKnow(frame, named.summary.plan, spanSentence(named.summary, 'lead', speaker)),
    '',
  ].join('\n');
}

function classTable(classes: readonly ClassAnswer[], today: number, speaker: Speaker): string {
  const { say, day, years } = speaker;
  const middle = ({ days }: DateSpread) => (days ? day(days.p50) : say('none'));
  return table(
    [
      { title: say('where.column.onion') },
      { title: say('where.column.start') },
      { title: say('where.column.onset') },
      { title: say('where.column.neck-fall') },
      { title: say('where.column.expect') },
    ],
    classes.map(({ type, isAtHome, bestStart, summary, verdict, gamble }) => [
      isAtHome ? say(`type.${type}`) : say('where.far-kind', { type: say(`type.${type}`) }),
      say('where.start', {
        start: say(`start.${bestStart}`),
        date: comingDay(summary.plan.startDay, today, speaker),
      }),
      middle(summary.onset),
      middle(summary.neckFall),
      gamble
        ? say('where.expect-gamble', { years: years(summary.seasonShares.good, summary.years) })
        : say('where.expect', {
            verdict: say(`verdict.${verdict}`),
            years: years(summary.seasonShares[verdict], summary.years),
          }),
    ]),
  );
}

function monthTable(facts: PlaceFacts, speaker: Speaker): string {
  const { say, quantity, number, dayLength } = speaker;
  const titles = ['month', 'day', 'mean', 'low', 'high', 'rain', 'wet-days', 'frost'] as const;
  return table(
    titles.map((title) => ({ title: say(`where.column.${title}`), right: title !== 'month' })),
    monthsOf(facts).map((row) => [
      speaker.month(row.month),
      dayLength(row.sunUpH),
      quantity('temperature', row.tempMeanC),
      quantity('temperature', row.tempMinC),
      quantity('temperature', row.tempMaxC),
      quantity('rain', row.rainMm),
      number(row.wetDays),
      number(row.frostNights),
    ]),
  );
}
