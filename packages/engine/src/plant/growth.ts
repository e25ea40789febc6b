import { ramp } from './thermal.ts';

/** Shoot dry matter of a seedling at emergence, g. Source: Brewster 2008 p. 129, Eqn 4.17 (ln W0 = −6.086). */
export const seedlingG = 0.00227;
/** Leaf area goes with dry matter to this power (Brewster 2008 p. 129, Eqns 4.17). */
const areaPower = 0.973;

/** Steps of a doubling of mass, each with a series of its own; a double's upper half counts them. */
const stepsADoubling = 32;
const stepBits = 20 - Math.log2(stepsADoubling);
const doublings = 14;
const terms = 6;
const massBits = new Float64Array(1);
const massWord = new Int32Array(massBits.buffer);
/** Where doubles have their sign and exponent. */
const upper = new Uint8Array(Float64Array.of(-1).buffer)[0] === 0 ? 1 : 0;
const firstStep = stepOf(seedlingG);

function stepOf(massG: number): number {
  massBits[0] = massG;
  return massWord[upper] >> stepBits;
}

/** For each step its middle, then the terms of Taylor's series of (mass / seedling's)^0.973 about it. */
const areaSeries = new Float64Array(stepsADoubling * doublings * (terms + 1));
for (let step = 0; step < stepsADoubling * doublings; step++) {
  massWord[1 - upper] = 0;
  massWord[upper] = (firstStep + step) << stepBits;
  const from = massBits[0];
  massWord[upper] = (firstStep + step + 1) << stepBits;
  const middle = (from + massBits[0]) / 2;
  let term = leafAreaByPower(middle);
  areaSeries[step * (terms + 1)] = middle;
  for (let power = 0; power < terms; power++) {
    areaSeries[step * (terms + 1) + 1 + power] = term;
    term *= (areaPower - power) / ((power + 1) * middle);
  }
}

function leafAreaByPower(shootG: number): number {
  return 0.5 * Math.exp(areaPower * Math.log(shootG / seedlingG));
}

/**
 * Leaf area of a young plant by its dry matter, cm². Source: Brewster 2008 p. 129, Eqns 4.17a, b combined.
 * By series within 1e-13 of the power, which takes four times as long.
 */
export function youngLeafArea(shootG: number): number {
  massBits[0] = shootG;
  const step = (massWord[upper] >> stepBits) - firstStep;
  if (step < 0 || step >= stepsADoubling * doublings) return leafAreaByPower(shootG);
  const at = step * (terms + 1);
  const x = shootG - areaSeries[at];
  return (
    areaSeries[at + 1] +
    x *
      (areaSeries[at + 2] +
        x *
          (areaSeries[at + 3] + x * (areaSeries[at + 4] + x * (areaSeries[at + 5] + x * areaSeries[at + 6]))))
  );
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
