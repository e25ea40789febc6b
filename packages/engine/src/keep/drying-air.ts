import { meanSaturationVapourPressure } from '../bed/index.ts';

/**
 * Share of a neck's drying that a day does, in air that lacks so much vapour, kPa, and moves so fast, m/s. The wind
 * function is Penman's (1 + 0.54 u, as FAO 24 has it; memory). The pace and the root of the deficit are ours, set so that
 * a damp northern shed and a hot dry field both come within the weeks that are published (drying.reference.test.ts):
 * tissue holds its water back the more, the harder the air pulls.
 */
export function neckDryingPerDay(deficitKPa: number, airMs: number): number {
  return 0.05 * Math.sqrt(Math.max(0, deficitKPa)) * (1 + 0.54 * airMs);
}

/** Of the weight: necks, roots and outer skins, and what goes through the skins for each kPa and day (ours, within the published 3–8 %). */
const neckWeightShare = 0.035;
const skinLossPerKPaDay = 0.0012;

/** Share of its weight that a bulb loses in all while it dries through so many kPa × days. */
export function driedLossShare(deficitKPaDays: number): number {
  return neckWeightShare + skinLossPerKPaDay * deficitKPaDays;
}

/** Rain from which a day is wet, mm; what is outdoors is wetted again and loses so much of its drying (ours). */
const wetDayFromMm = 1;
export function wettedAgain(rainMm: number): number {
  return rainMm < wetDayFromMm ? 0 : 0.06 * (1 - Math.exp(-rainMm / 5));
}

/** Humidity of the air on a wet day, % (memory). */
const wetDayHumidityPct = 90;

/** What the air outdoors lacks of vapour, kPa: it holds the month's vapour, whatever the day's warmth. */
export function outdoorDeficitKPa(
  tempMinC: number,
  tempMaxC: number,
  vapourKPa: number,
  rainMm: number,
): number {
  const full = meanSaturationVapourPressure(tempMinC, tempMaxC);
  const driest = rainMm >= wetDayFromMm ? 1 - wetDayHumidityPct / 100 : 1;
  return Math.max(0.03 * full, Math.min(full - vapourKPa, driest * full));
}
