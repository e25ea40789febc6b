import { evenNormals, randomSource } from '../math/index.ts';

/** How one season's plants differ from the type's mean: one draw a year. */
export type Draw = {
  criticalShiftH: number;
  ripeningFactor: number;
  phyllochronFactor: number;
  /** Dry matter made in the bed against what the model makes. Usual draws leave it at 1: only bulbs that were measured tell of it. */
  growthFactor: number;
};

/** The middle plant: nothing otherwise than its type. */
export const noDraw: Draw = {
  criticalShiftH: 0,
  ripeningFactor: 1,
  phyllochronFactor: 1,
  growthFactor: 1,
};

/** Standard deviations of the draws. */
export type DrawSpread = { criticalH: number; ripening: number; phyllochron: number };

/**
 * Spread of cultivars within a type and of our knowledge of it. Set by hand after the fit, until the 10–90 % band of
 * places left out held seven in ten published harvests (docs/validation.md).
 */
export const drawSpread: DrawSpread = { criticalH: 0.4, ripening: 0.3, phyllochron: 0.1 };

/** Plants of an onion are no quicker than this against their type. */
export const leastFactor = 0.7;

/**
 * Draws of a kind's plants, evenly spread (sliced Latin hypercube, Qian 2012): each parameter's distribution is cut into
 * as many equal shares as there are years and met once in each, so that draws don't shift the middle of an answer.
 */
export function drawsOf(years: number, seed: number, spread: DrawSpread = drawSpread): Draw[] {
  // Apart from the weather's own sequence, so that more years leave the earlier ones as they are.
  const random = randomSource(seed * 2 + 1);
  const critical = evenNormals(years, random);
  const ripening = evenNormals(years, random);
  const phyllochron = evenNormals(years, random);
  return Array.from({ length: years }, (_, year) => ({
    criticalShiftH: spread.criticalH * critical[year],
    ripeningFactor: Math.max(leastFactor, 1 + spread.ripening * ripening[year]),
    phyllochronFactor: Math.max(leastFactor, 1 + spread.phyllochron * phyllochron[year]),
    growthFactor: 1,
  }));
}
