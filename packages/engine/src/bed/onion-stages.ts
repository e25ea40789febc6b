import type { CropCurve } from './crop-coefficient.ts';

/*
 * Dry (bulb) onions by days instead of by growth, to hold the season's own account against. FAO-56 (1998): stages of
 * table 11, single coefficients of table 12, basal ones of table 17.
 */

const stages = {
  /** Planted in April, Mediterranean: 150 days. */
  mediterranean: [15, 25, 70, 40],
  /** Planted in October or January, arid region and California: 210 days. */
  arid: [20, 35, 110, 45],
} as const;

type Region = keyof typeof stages;

/** Kc of table 12 by days of table 11. */
export const onionSingleCurve = (region: Region): CropCurve => ({
  initial: 0.7,
  middle: 1.05,
  end: 0.75,
  days: stages[region],
});

/** Kcb of table 17 by days of table 11. */
export const onionBasalCurve = (region: Region): CropCurve => ({
  initial: 0.15,
  middle: 0.95,
  end: 0.65,
  days: stages[region],
});
