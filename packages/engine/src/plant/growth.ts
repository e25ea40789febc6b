import { ramp } from './thermal.ts';

/** Shoot dry matter of a seedling at emergence, g. Source: Brewster 2008 p. 129, Eqn 4.17 (ln W0 = −6.086). */
export const seedlingG = 0.00227;

/** Leaf area of a young plant by its dry matter, cm². Source: Brewster 2008 p. 129, Eqns 4.17a, b combined. */
export function youngLeafArea(shootG: number): number {
  // e^(0.973 ln x), several times faster than a power.
  return 0.5 * Math.exp(0.973 * Math.log(shootG / seedlingG));
}

/**
 * How well light is turned into growth at a daily mean temperature, 0…1: nothing at 4 °C, full from 14 to
 * 27 °C, nothing at 40 °C. Ends from the Wageningen seed-onion set and Brewster 1979; slopes memory.
 */
export function growthTemperatureFactor(meanC: number): number {
  return meanC < 20 ? ramp(meanC, 4, 14) : ramp(meanC, 40, 27);
}

/** Seedlings in a tray or seedbed, per m² (common practice, no source: plug trays and nursery beds of 700–1500). */
export const nurseryPerM2 = 1000;

/** Light a tray indoors gets through glass, against the open (memory: a sill or unlit greenhouse bench). */
export const glazingShare = 0.5;

/** What an hour of lamps over trays is worth, MJ m⁻² of total solar (memory: about 150 µmol m⁻² s⁻¹ of PAR). */
export const lampMJPerHour = 0.25;

/**
 * Share of the leaf pace that crowded seedlings keep, 0…1: all at no leaf, nothing at `mostLeaves`
 * (shape ours; 60 days give 2.5 leaves, Hokkaido 1973–75).
 */
export function crowdedPace(leaves: number, mostLeaves: number): number {
  const full = leaves / mostLeaves;
  return full >= 1 ? 0 : 1 - full * full;
}

/** Bright days use light less: growth follows Rs · (1 + 15/half) / (1 + Rs/half), unchanged on a day of 15 MJ m⁻². */
export function usedLightMJ(solarMJ: number, halfMJ: number): number {
  return (solarMJ * (1 + 15 / halfMJ)) / (1 + solarMJ / halfMJ);
}

/**
 * Growth kept under foliar disease in a long wet, warm spell, 0…1: rough, stated as such
 * (common practice, no source: wet-season crops give about a third less).
 * `wetness` is the smoothed share of wet days.
 */
export function wetSpellFactor(wetness: number, meanC: number): number {
  if (wetness <= 0.45 || meanC <= 14) return 1;
  return 1 - 0.35 * ramp(wetness, 0.45, 0.9) * ramp(meanC, 14, 20);
}

// 1 − e^(−x) for x in 0…8 by steps of 1/512; straight lines between err by less than 5e-7.
const interceptSteps = 512;
const interceptTable = Float64Array.from(
  { length: 8 * interceptSteps + 2 },
  (_, i) => 1 - Math.exp(-i / interceptSteps),
);

/** Share of light a canopy intercepts, 0…1, by extinction × leaf area index (Beer–Lambert law), from a table. */
export function interceptedShare(depth: number): number {
  if (depth >= 8) return 1;
  const place = depth * interceptSteps;
  const below = Math.floor(place);
  return interceptTable[below] + (interceptTable[below + 1] - interceptTable[below]) * (place - below);
}
