import { saturationVapourPressure } from '../bed/index.ts';
import type { StoredLot } from './keeping.ts';

/** How fast rest runs out at a temperature, °C, against the cool store of the usual keeping: slow near 0 and above 25, fastest at 10–20 (Miedema 1994). */
export function sproutingPace(tempC: number): number {
  const warmth = Math.exp(-(((tempC - 15) / 8) ** 2));
  return 0.6 + 1.6 * warmth;
}

/** Share of the sound bulbs that rot in a day. */
export function rotPerDay(tempC: number, humidityPct: number, lot: StoredLot): number {
  const warmth = 2 ** ((tempC - 5) / 10);
  const damp = 1 + Math.max(0, humidityPct - 70) / 10;
  return 0.0004 * warmth * damp * (1 + 4 * lot.thickNeckShare + 3 * lot.bruisedShare);
}

/** Share of its mass that a sound bulb loses in a day; faster while neck and skins dry in the first weeks. */
export function dryingPerDay(tempC: number, humidityPct: number, day: number): number {
  const deficitKPa = saturationVapourPressure(tempC) * (1 - humidityPct / 100);
  return 0.0004 + 0.0004 * deficitKPa + (day < 21 ? 0.0015 : 0);
}
