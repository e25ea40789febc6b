import { monthLengths } from '../calendar/index.ts';
import { clamp, normalCdf, normalQuantile } from '../math/index.ts';

/**
 * Frost nights of one month (0 = January) after the month's minimum temperatures rise by `warmingC`,
 * taking daily minima as normal with `sdC` about `meanMinC`. Where the month has none or nothing but frost,
 * its distance from 0 °C is taken from the mean minimum, at least three standard deviations.
 */
export function shiftFrostNights(
  nights: number,
  month: number,
  meanMinC: number,
  sdC: number,
  warmingC: number,
): number {
  const days = monthLengths[month];
  const share = clamp(nights / days, 0, 1);
  let score = normalQuantile(share);
  if (share === 0) score = Math.min(-3, -meanMinC / sdC);
  if (share === 1) score = Math.max(3, -meanMinC / sdC);
  const shifted = days * normalCdf(score - warmingC / sdC);
  return warmingC > 0 ? Math.min(nights, shifted) : Math.max(nights, shifted);
}
