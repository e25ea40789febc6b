import { saturationVapourPressure } from '../bed/index.ts';
import { clamp } from '../math/index.ts';
import { bulbLossPerDay, neckDryingPerDay } from './drying-air.ts';
import type { StoreClimate } from './store-climate.ts';

/** What the air of a store does to onions in a day, by day of a climate year. */
export type StoreRates = {
  /** Days of rest near 0 °C that a day there uses up: while bulbs rest deep, and once they stir. */
  deepRest: Float64Array;
  rest: Float64Array;
  /** Share of the sound bulbs of an ordinary lot that rot. */
  rot: Float64Array;
  /** Share of the sound bulbs that frost ruins. */
  frost: Float64Array;
  /** Share of a neck's drying that is done. */
  neck: Float64Array;
  /** Share of a bulb's mass that leaves it, its neck apart. */
  drying: Float64Array;
};

/** Height, middle and width of the warmth that breaks rest, °C; the width, and the height in deep rest, are memory, adjustable. */
const breaking = { height: 2.16, deepHeight: 1, middleC: 14, widthC: 6 } as const;

/**
 * How fast rest runs out at a temperature, °C; 1 near 0 °C and above 30. Slow in the cold and again above 25, fastest at
 * 10–20 (seen: Brewster, citing Miedema 1994a). In bulbs that stir a month at 1 °C uses up as much as 10 days at 15 °C
 * (seen: Sorensen & Grevsen 2001, of the last two months), which sets the height; in deep rest warmth does less.
 */
function sproutingPace(tempC: number, isDeep: boolean): number {
  const height = isDeep ? breaking.deepHeight : breaking.height;
  return 1 + height * Math.exp(-(((tempC - breaking.middleC) / breaking.widthC) ** 2));
}

/** Of an ordinary lot at 2 °C and 70 %, a day. Set by hand on the published figures of docs/validation.md. */
const rotAt2C = 0.0002;

/**
 * Share of the sound bulbs of an ordinary lot that rot in a day. Twice as many with every 12 °C (memory, adjustable;
 * black mould outweighs sprouting in warm stores, seen: Brewster, citing Currah & Proctor 1990), more where it is damp:
 * above 75 % roots and rot (memory), 65–70 % is the rule (seen: UC Davis).
 */
function rotPerDay(tempC: number, humidityPct: number): number {
  const warmth = 2 ** ((tempC - 2) / 12);
  const damp = 1 + Math.max(0, humidityPct - 70) / 10;
  return Math.min(1, rotAt2C * warmth * damp);
}

/**
 * Share of the bulbs that a day of frost ruins: none down to −0.8 °C, where onions begin to freeze (memory: USDA
 * Handbook 66), a twentieth at −2 °C, since down to there they may thaw unharmed (seen: a holding page of Oregon State,
 * citing Adamicki), and harm adds up (seen: Cornell). The twentieth is memory, adjustable.
 */
function frostPerDay(tempC: number): number {
  return clamp((-0.8 - tempC) / 1.2, 0, 10) * 0.05;
}

/** Air at bulbs in crates and nets, where none blows, m/s (memory, adjustable). */
const storeAirMs = 0.1;

const known = new WeakMap<StoreClimate, StoreRates>();

/** Worked out once a store: a kitchen's year asks for hundreds of lots in the same air. */
export function ratesOf(store: StoreClimate): StoreRates {
  const before = known.get(store);
  if (before) return before;
  const { tempC, humidityPct } = store;
  const deficitKPa = tempC.map(
    (temp, day) => saturationVapourPressure(temp) * Math.max(0, 1 - humidityPct[day] / 100),
  );
  const rates: StoreRates = {
    deepRest: tempC.map((temp) => sproutingPace(temp, true)),
    rest: tempC.map((temp) => sproutingPace(temp, false)),
    rot: tempC.map((temp, day) => rotPerDay(temp, humidityPct[day])),
    frost: tempC.map(frostPerDay),
    neck: deficitKPa.map((deficit) => neckDryingPerDay(deficit, storeAirMs)),
    drying: tempC.map((temp, day) => bulbLossPerDay(temp, deficitKPa[day])),
  };
  known.set(store, rates);
  return rates;
}
