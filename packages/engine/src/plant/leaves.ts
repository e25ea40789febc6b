/** Most leaves a plant of this model ever makes; tables and buffers have this length. */
export const leafLimit = 40;

/** Green leaves stand at most this many (trade observation, common practice, no source). */
export const mostGreenLeaves = 9;

/**
 * Running total of full-grown leaf areas: entry n is the area of leaves 1…n, cm².
 * Leaf i reaches areaMax·(1 − e^(−(i/scale)²)) (shape from memory).
 */
export function leafAreaTotals(areaMaxCm2: number, scale: number): Float64Array {
  const totals = new Float64Array(leafLimit + 2);
  for (let i = 1; i < totals.length; i++)
    totals[i] = totals[i - 1] + areaMaxCm2 * (1 - Math.exp(-((i / scale) ** 2)));
  return totals;
}

/** Area of leaves up to a fractional leaf number, cm². */
export function areaUpTo(totals: Float64Array, leaves: number): number {
  const whole = Math.floor(leaves);
  const below = totals[whole];
  return below + (totals[whole + 1] - below) * (leaves - whole);
}
