import { ramp } from './thermal.ts';

/** Temperature at which cold acts most towards flowering, °C (memory: Brewster 1983; Shishido & Saito 1975). */
const bestColdC = 9;

/** Progress towards flowering at a temperature, in days at 9 °C per day: 0 at 0 °C, 1 at 9, 0 at the type's ceiling. */
export function coldResponse(temp: number, ceilingC: number): number {
  return temp < bestColdC ? ramp(temp, 0, bestColdC) : ramp(temp, ceilingC, bestColdC);
}

/** Daily mean from which warmth takes cold back, °C, and how much a day (memory; direction seen: Yamasaki 2000). */
export const warmthUndoes = { aboveC: 20, days: 0.5 } as const;

/**
 * How far a plant is big enough to be turned by cold, 0…1: nothing at the type's bolting size, all once it has
 * grown by e^span. Size counts as its logarithm, that is, about as leaf number does (Hosono et al. 2022).
 */
export function boltingSizeFactor(shootG: number, boltingSizeG: number, span: number): number {
  if (shootG <= boltingSizeG) return 0;
  const factor = Math.log(shootG / boltingSizeG) / span;
  return factor < 1 ? factor : 1;
}

/** Share of plants that bolt after `coldDays`. */
export function boltedShare(coldDays: number, halfD: number, spreadD: number): number {
  return 1 / (1 + Math.exp((halfD - coldDays) / spreadD));
}

/** Cold-stored sets of this diameter flower by half, mm. */
export const setHalfMm = 21.5;
const warmStoreMm = 14;

/**
 * Cold that a set brings from its store, in days at 9 °C, so that a cold-stored set bolts as
 * logistic(0.5 · (d − {@link setHalfMm})); what a usual spring adds is next to nothing.
 * Slope: Sapporo 1949–50 (0.6, 22, 71, 97 % for ≤ 11, 12–17, 18–24, ≥ 25 mm, half at 18.9). Half-point: sets on sale
 * flower less, about one in ten at 16 mm (common practice, no source). Warm stores all but end bolting
 * (Heath 1943: 22 weeks at 30 °C), here by a half-point 14 mm higher.
 */
export function setColdDays(
  diameterMm: number,
  store: 'cold' | 'warm',
  halfD: number,
  spreadD: number,
): number {
  const halfMm = store === 'cold' ? setHalfMm : setHalfMm + warmStoreMm;
  return Math.max(0, halfD + spreadD * 0.5 * (diameterMm - halfMm));
}
