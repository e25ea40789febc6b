import { type PlantValues, randomSource } from '../../packages/engine/src/index.ts';
import type { CalendarRow } from './calendar-rows.ts';
import { bandHolds } from './coverage.ts';
import { predictLifting } from './predict.ts';
import { scoreSite } from './sites.ts';
import { type Miss, missOf, timingScore } from './timing.ts';
import { timingRows, verdictRows } from './timing-rows.ts';
import { balancedAccuracy, type VerdictPair, verdictPair } from './verdicts.ts';

/** Which parameters judge a row: one set for all, or those that never saw its neighbourhood. */
export type ValuesFor = (row: CalendarRow) => PlantValues;

export type Scored = {
  misses: Miss[];
  /** Rows whose harvest window's middle lies in the predicted 10–90 % band. */
  covered: { row: CalendarRow; holds: boolean }[];
  pairs: VerdictPair[];
};

/** Runs every row once for its dates, its band and its verdict. */
export function scoreRows(rows: readonly CalendarRow[], valuesFor: ValuesFor): Scored {
  const timed = timingRows(rows);
  return {
    misses: timed.map((row) =>
      missOf(row, row.harvestWindow!, predictLifting(scoreSite(row, valuesFor(row)), row)),
    ),
    covered: timed.map((row) => ({ row, holds: bandHolds(row, valuesFor(row)) })),
    pairs: verdictRows(rows).map((row) => verdictPair(row, valuesFor(row))),
  };
}

export type Figures = {
  within10: number;
  within7: number;
  meanMissDays: number;
  centreErrorDays: number;
  coverage: number;
  balancedAccuracy: number;
};

/** The figures of the score; dates on rows read in full, coverage by weight. */
export function figuresOf({ misses, covered, pairs }: Scored): Figures {
  const full = timingScore(
    misses.filter(({ row }) => row.weight === 1),
    () => 1,
  );
  const weight = covered.reduce((a, { row }) => a + row.weight, 0);
  return {
    within10: full.within10,
    within7: full.within7,
    meanMissDays: full.meanMissDays,
    centreErrorDays: full.meanCentreErrorDays,
    coverage: covered.reduce((a, { row, holds }) => a + (holds ? row.weight : 0), 0) / weight,
    balancedAccuracy: balancedAccuracy(pairs),
  };
}

const resamples = 1000;
const seed = 1;

/** 90 % bootstrap intervals of the figures over rows, drawn with replacement. */
export function intervalsOf(scored: Scored): Record<keyof Figures, [number, number]> {
  const random = randomSource(seed);
  const draw = <T>(of: readonly T[]) =>
    of.map(() => of[Math.min(of.length - 1, Math.floor(random.uniform() * of.length))]);
  const found = Array.from({ length: resamples }, () =>
    figuresOf({ misses: draw(scored.misses), covered: draw(scored.covered), pairs: draw(scored.pairs) }),
  );
  const interval = (name: keyof Figures): [number, number] => {
    const sorted = found.map((figures) => figures[name]).sort((a, b) => a - b);
    return [sorted[Math.floor(0.05 * resamples)], sorted[Math.floor(0.95 * resamples)]];
  };
  return Object.fromEntries(
    (Object.keys(found[0]) as (keyof Figures)[]).map((name) => [name, interval(name)]),
  ) as Record<keyof Figures, [number, number]>;
}
