import { classOfType, dayInYear, type WhenAnswer } from '@neckfall/engine';
import type { Frame } from '../frame/frame.ts';
import { documentHead } from './document-head.ts';
import { practiceOf } from './practice.ts';
import { dateRangeOf, monthDay, rangeOf, seasonSharesOf } from './values.ts';
import type { WhenDocument } from './when-schema.ts';

export function whenDocument(
  frame: Frame,
  { starts, windows, reason }: WhenAnswer,
  cultivar: string | null,
  year: number,
): WhenDocument {
  const { plan } = starts[0].summary;
  const date = (dayOfYear: number) => monthDay(dayInYear(year, dayOfYear));
  return {
    schema: 'neckfall/when@1',
    ...documentHead(frame),
    plan: {
      class: classOfType[plan.type],
      type: plan.type,
      cultivar,
      start: plan.start,
      ...practiceOf(plan),
    },
    starts: starts.map(({ dayOfYear, summary }) => ({
      date: date(dayOfYear),
      dayOfYear,
      seasonShares: seasonSharesOf(summary.seasonShares),
      outcome: summary.outcome,
      gamble: summary.gamble,
      onset: dateRangeOf(summary.onset),
      neckFall: dateRangeOf(summary.neckFall),
      bulbDiameterMm: rangeOf(summary.bulbDiameterMm),
      leavesMadeAtOnset: rangeOf(summary.leavesMadeAtOnset),
      boltedPlantsShare: rangeOf(summary.boltedPlantsShare),
    })),
    windows: windows.map(({ from, to, best }) => ({ from: date(from), to: date(to), best: date(best) })),
    reason: frame.speaker.reason(reason),
  };
}
