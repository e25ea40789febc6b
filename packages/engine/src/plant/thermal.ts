/** Thermal time of one temperature: degrees above `base`, none gained above `cap`. °C. */
export function degreesAbove(temp: number, base: number, cap: number): number {
  return temp <= base ? 0 : (temp < cap ? temp : cap) - base;
}

// Eight equal steps of a sine day fall on four temperatures, each met twice.
export const innerStep = Math.sin(Math.PI / 8);
export const outerStep = Math.sin((3 * Math.PI) / 8);

/** Straight ramp from 0 at `zero` to 1 at `full`; works downhill too (`zero` > `full`). */
export function ramp(x: number, zero: number, full: number): number {
  const share = (x - zero) / (full - zero);
  return share < 0 ? 0 : share > 1 ? 1 : share;
}
