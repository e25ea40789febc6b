import { normalCdf, normalQuantile } from '../math/index.ts';

/** Standard deviation of the days on which tops of one stand go over (memory: common practice, no source). */
export const topsBetweenPlantsDays = 5;

/** A neck fall of the model is 8 tops in 10. */
const fallenZ = normalQuantile(0.8);

/** Share of the tops of a stand that are over, so many days after its neck fall; before it where negative. */
export function topsOverShare(daysAfterFall: number): number {
  return normalCdf(daysAfterFall / topsBetweenPlantsDays + fallenZ);
}

/** Days after neck fall on which such a share, 0…1, is over; negative before. */
export function daysToTopsOver(share: number): number {
  return topsBetweenPlantsDays * (normalQuantile(share) - fallenZ);
}
