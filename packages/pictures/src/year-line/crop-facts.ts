import { readiness } from '@neckfall/answers';
import {
  bulbDiameterMm,
  type DayRow,
  type SeasonSummary,
  type Spread,
  type StartMethod,
} from '@neckfall/engine';
import type { CropLine, CropMark } from './year-line-props.ts';

/** The bulb is drawn at every fourth day. */
const bulbStepDays = 4;
/** Two marks nearer than this are one, days. */
const togetherDays = 3;
/** What fewer of the years bring is no part of a year as it mostly goes. */
const mostYears = 0.5;

/** A crop of the year line in numbers alone, as they may travel; see `cropSaid` for the words. */
export type CropFacts = Pick<CropLine, 'leaves' | 'bulb' | 'topsOver'> & {
  start: StartMethod;
  /** Leaves made when bulbs start, or by the end; null where none is known. */
  leavesMade: { day: number; count: number } | null;
  marks: Omit<CropMark, 'text'>[];
};

/** From what many years say (dates) and the median season's days (steps). */
export function cropFactsOf(summary: SeasonSummary, rows: readonly DayRow[]): CropFacts {
  const leavesMade = summary.leavesMadeAtOnset;
  const made = rows.findIndex(({ bulbing }) => bulbing >= 1);
  const atBulbs = rows[made >= 0 ? made : rows.length - 1];
  const bulb = rows
    .filter(({ bulbG }, i) => bulbG > 0 && (i % bulbStepDays === 0 || i === rows.length - 1))
    .map(({ day, bulbG }) => ({ day, acrossMm: bulbDiameterMm(bulbG) }));
  const last = rows.at(-1);
  return {
    start: summary.plan.start,
    leaves: stepsOf(rows),
    leavesMade:
      atBulbs && leavesMade !== null ? { day: atBulbs.day, count: Math.round(leavesMade.p50) } : null,
    bulb,
    topsOver: last && last.ripening >= 1 ? last.day : null,
    marks: marksOf(summary, rows),
  };
}

/** The day of each further whole leaf. */
function stepsOf(rows: readonly DayRow[]): CropLine['leaves'] {
  const steps: CropLine['leaves'] = [];
  for (const { day, leavesMade } of rows) {
    const made = Math.floor(leavesMade);
    if (made > (steps.at(-1)?.made ?? 0)) steps.push({ day, made });
  }
  const last = rows.at(-1);
  if (last && steps.length > 0) steps.push({ day: last.day, made: steps[steps.length - 1].made });
  return steps;
}

function marksOf(summary: SeasonSummary, rows: readonly DayRow[]): CropFacts['marks'] {
  const { plan, plantOut, onset, neckFall } = summary;
  const marks: CropFacts['marks'] = [{ kind: 'start', day: plan.startDay, span: null }];
  const add = (kind: CropMark['kind'], day: number, span: CropMark['span'] = null) =>
    marks.push({ kind, day, span });
  if (plantOut?.days) add('out', Math.round(plantOut.days.p50));
  const { long, big } = readiness(rows, summary.needPhotoperiodH);
  if (long !== null && big !== null && big - long <= togetherDays) add('ready', big);
  else {
    if (long !== null) add('long', long);
    if (big !== null) add('big', big);
  }
  if (onset.days && onset.share >= mostYears) add('bulbs', Math.round(onset.days.p50), spanOf(onset.days));
  if (neckFall.days && neckFall.share >= mostYears)
    add('tops', Math.round(neckFall.days.p50), spanOf(neckFall.days));
  return marks;
}

function spanOf({ p10, p90 }: Spread): CropMark['span'] {
  return { from: Math.round(p10), to: Math.round(p90) };
}
