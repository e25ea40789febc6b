import { coldResponse } from './bolting.ts';
import { degreesAbove, innerStep, outerStep, ramp } from './thermal.ts';

/*
 * Means of a response to temperature over days that swing as a sine between their extremes (Baskerville & Emin 1969,
 * memory; here by eight steps, so that any response fits). A loop each, with its response named in it: one loop handed
 * the response as a function calls it four times a day and takes three times as long.
 */

/** Thermal time above `baseC`, none gained above `capC`, °C d. */
export function degreesColumn(
  lowC: Float64Array,
  highC: Float64Array,
  baseC: number,
  capC: number,
): Float64Array {
  const out = new Float64Array(lowC.length);
  for (let i = 0; i < out.length; i++) {
    // Most winter days lie below the base throughout.
    if (highC[i] <= baseC) continue;
    const centre = (lowC[i] + highC[i]) / 2;
    const swing = (highC[i] - lowC[i]) / 2;
    out[i] =
      (degreesAbove(centre - outerStep * swing, baseC, capC) +
        degreesAbove(centre - innerStep * swing, baseC, capC) +
        degreesAbove(centre + innerStep * swing, baseC, capC) +
        degreesAbove(centre + outerStep * swing, baseC, capC)) /
      4;
  }
  return out;
}

/** A straight ramp from 0 at `zeroC` to 1 at `fullC`. */
export function rampColumn(
  lowC: Float64Array,
  highC: Float64Array,
  zeroC: number,
  fullC: number,
): Float64Array {
  const out = new Float64Array(lowC.length);
  for (let i = 0; i < out.length; i++) {
    const centre = (lowC[i] + highC[i]) / 2;
    const swing = (highC[i] - lowC[i]) / 2;
    out[i] =
      (ramp(centre - outerStep * swing, zeroC, fullC) +
        ramp(centre - innerStep * swing, zeroC, fullC) +
        ramp(centre + innerStep * swing, zeroC, fullC) +
        ramp(centre + outerStep * swing, zeroC, fullC)) /
      4;
  }
  return out;
}

/** Days at 9 °C gained towards flowering. */
export function coldColumn(lowC: Float64Array, highC: Float64Array, ceilingC: number): Float64Array {
  const out = new Float64Array(lowC.length);
  for (let i = 0; i < out.length; i++) {
    const centre = (lowC[i] + highC[i]) / 2;
    const swing = (highC[i] - lowC[i]) / 2;
    out[i] =
      (coldResponse(centre - outerStep * swing, ceilingC) +
        coldResponse(centre - innerStep * swing, ceilingC) +
        coldResponse(centre + innerStep * swing, ceilingC) +
        coldResponse(centre + outerStep * swing, ceilingC)) /
      4;
  }
  return out;
}
