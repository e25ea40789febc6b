import { climateYearDays } from '../calendar/index.ts';
import { normalCdf } from '../math/index.ts';
import type { StoreClimate } from './store-climate.ts';
import type { StoreDraw } from './store-draw.ts';
import { dryingPerDay, rotPerDay, sproutingPace } from './store-rates.ts';

/** What goes into store: how long its kind usually keeps, and in what state it is. */
export type StoredLot = {
  /** Shortest and longest usual keeping of the kind, dry, cool and airy, months. */
  keepsMonths: readonly [number, number];
  /** Shares of the bulbs, 0…1. */
  thickNeckShare: number;
  bruisedShare: number;
};

/** A lot by day from the day it was lifted (index 0); shares of the bulbs lifted, which sum to 1. */
export type KeepingCurve = {
  sound: Float64Array;
  sprouted: Float64Array;
  rotten: Float64Array;
  /** Mass of a sound bulb as a share of what it weighed when lifted. */
  massShare: Float64Array;
};

/** Longer than any onion keeps. */
export const keptDays = 420;

const monthDays = 30.4;

/**
 * What becomes of a lot, day by day: bulbs end their rest as the store's warmth tells them, rot by its warmth and damp,
 * and dry out. `liftedOn` the climate day of lifting.
 */
export function keepingCurve(
  lot: StoredLot,
  store: StoreClimate,
  liftedOn: number,
  draw: StoreDraw,
): KeepingCurve {
  const sound = new Float64Array(keptDays);
  const sprouted = new Float64Array(keptDays);
  const rotten = new Float64Array(keptDays);
  const massShare = new Float64Array(keptDays);
  const restDays = (monthDays * (lot.keepsMonths[0] + lot.keepsMonths[1])) / 2;
  let rest = 0;
  let mass = 1;
  let lastSprouted = 0;
  let soundShare = 1;
  let sproutedShare = 0;
  for (let day = 0; day < keptDays; day++) {
    sound[day] = soundShare;
    sprouted[day] = sproutedShare;
    rotten[day] = 1 - soundShare - sproutedShare;
    massShare[day] = mass;
    const at = (liftedOn + day) % climateYearDays;
    const tempC = store.tempC[at];
    const humidityPct = store.humidityPct[at];
    rest += (draw.sprouting * sproutingPace(tempC)) / restDays;
    const ended = normalCdf((rest - 1) / restSpread);
    const sprouting = (ended - lastSprouted) / Math.max(1e-9, 1 - lastSprouted);
    lastSprouted = ended;
    const rotting = draw.rotting * rotPerDay(tempC, humidityPct, lot);
    const sproutNow = soundShare * sprouting;
    sproutedShare += sproutNow;
    soundShare = (soundShare - sproutNow) * (1 - rotting);
    mass *= 1 - draw.drying * dryingPerDay(tempC, humidityPct, day);
  }
  return { sound, sprouted, rotten, massShare };
}

/** Bulbs of a lot end their rest over so much of its length (memory, adjustable). */
const restSpread = 0.25;
