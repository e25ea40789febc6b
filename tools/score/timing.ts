import type { CalendarRow, Window } from './calendar-rows.ts';

/** A prediction set against a harvest window, days. */
export type Miss = {
  row: CalendarRow;
  /** Distance beyond the nearer edge of the window, 0 inside. */
  missDays: number;
  /** Signed distance to the middle of the window; late is positive. */
  centreDays: number;
};

/** What a season that never ends costs, days. */
const neverDays = 90;

export function missOf(row: CalendarRow, window: Window, predicted: number | null): Miss {
  if (predicted === null) return { row, missDays: neverDays, centreDays: neverDays };
  const middle = (window.from + window.to) / 2;
  const centreDays = circular(predicted - middle);
  const half = (window.to - window.from) / 2;
  return { row, missDays: Math.max(0, Math.abs(centreDays) - half), centreDays };
}

/** Brings a difference of days into −182…182. */
function circular(days: number): number {
  return days - 365 * Math.round(days / 365);
}

export type TimingScore = {
  rows: number;
  weight: number;
  within7: number;
  within10: number;
  meanMissDays: number;
  meanCentreErrorDays: number;
};

export function timingScore(misses: readonly Miss[], weightOf: (row: CalendarRow) => number): TimingScore {
  let weight = 0;
  let within7 = 0;
  let within10 = 0;
  let miss = 0;
  let centre = 0;
  for (const m of misses) {
    const w = weightOf(m.row);
    weight += w;
    if (m.missDays <= 7) within7 += w;
    if (m.missDays <= 10) within10 += w;
    miss += w * m.missDays;
    centre += w * Math.abs(m.centreDays);
  }
  return {
    rows: misses.length,
    weight,
    within7: within7 / weight,
    within10: within10 / weight,
    meanMissDays: miss / weight,
    meanCentreErrorDays: centre / weight,
  };
}
