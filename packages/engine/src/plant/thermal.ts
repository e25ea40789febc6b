/** Thermal time of one temperature: degrees above `base`, none gained above `cap`. °C. */
export function degreesAbove(temp: number, base: number, cap: number): number {
  return temp <= base ? 0 : (temp < cap ? temp : cap) - base;
}

// Eight equal steps of a sine day fall on four temperatures, each met twice.
const innerStep = Math.sin(Math.PI / 8);
const outerStep = Math.sin((3 * Math.PI) / 8);

/**
 * Mean of a response over a day whose temperature swings as a sine between its extremes (eight steps).
 * Source: the sine day of Baskerville & Emin 1969 (memory), here by quadrature so that any response fits.
 */
export function dayMean(response: (temp: number) => number, minC: number, maxC: number): number {
  const centre = (minC + maxC) / 2;
  const swing = (maxC - minC) / 2;
  return (
    (response(centre - outerStep * swing) +
      response(centre - innerStep * swing) +
      response(centre + innerStep * swing) +
      response(centre + outerStep * swing)) /
    4
  );
}

/** Straight ramp from 0 at `zero` to 1 at `full`; works downhill too (`zero` > `full`). */
export function ramp(x: number, zero: number, full: number): number {
  const share = (x - zero) / (full - zero);
  return share < 0 ? 0 : share > 1 ? 1 : share;
}
