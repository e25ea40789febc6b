import { asinClamped } from '../math/index.ts';

/*
 * Warmth of a day above a base from its lowest and highest temperature, °C d, in the three ways that published sums of
 * pests were counted in.
 */

/** Degree-days of one day by its lowest and highest temperature between a base and an upper limit, °C. */
export type DegreeDays = (lowC: number, highC: number, baseC: number, upperC: number) => number;

/** The mean of the day above the base. Source: as printed with the sums (University of Wisconsin Extension XHT1087). */
export const averageDegrees: DegreeDays = (lowC, highC, baseC) => Math.max(0, (lowC + highC) / 2 - baseC);

/** The same with the highest taken no higher than the upper limit. Source: University of Minnesota, after Funderburk et al. 1984. */
export const modifiedDegrees: DegreeDays = (lowC, highC, baseC, upperC) =>
  averageDegrees(lowC, Math.min(highC, upperC), baseC, upperC);

/** A sine between the lowest and the highest, cut off flat above the upper limit. Source: Baskerville & Emin 1969 (memory). */
export const singleSineDegrees: DegreeDays = (lowC, highC, baseC, upperC) =>
  sineAbove(lowC, highC, baseC) - sineAbove(lowC, highC, upperC);

function sineAbove(lowC: number, highC: number, baseC: number): number {
  if (highC <= baseC) return 0;
  const mean = (lowC + highC) / 2;
  if (lowC >= baseC) return mean - baseC;
  const half = (highC - lowC) / 2;
  const angle = asinClamped((baseC - mean) / half);
  return ((mean - baseC) * (Math.PI / 2 - angle) + half * Math.cos(angle)) / Math.PI;
}
