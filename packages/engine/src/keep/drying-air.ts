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

/** Share of a bulb's weight that its neck, roots and outer skins lose while they dry (ours; with what the bulb itself loses meanwhile 5–8 %, seen: UC Davis). */
export const neckWeightShare = 0.04;

/** Water lost through the skins, share a day and kPa. Set by hand on the published figures of docs/validation.md. */
const lostPerKPa = 0.0011;

/** In drier air skins tighten: at this deficit they let through half of what they would, kPa (memory, adjustable). */
const tightenKPa = 1;

/**
 * Dry matter burnt in a day, share of the bulb's mass: 3.5 mL CO2/kg h at 2.5 °C (seen: UC Davis) is 6.9 mg, of which each
 * 44 g are 30 g of sugar. It doubles every 15 °C, between the 28 mL at 26 °C of UC Davis (seen) and the 8 mg at 20 °C of
 * USDA Handbook 66 (memory), which differ fourfold.
 */
function burntPerDay(tempC: number): number {
  return 0.000112 * 2 ** ((tempC - 2.5) / 15);
}

/** Share of its mass that a sound bulb loses in a day besides its neck, by the drying power of the air and what it burns. */
export function bulbLossPerDay(tempC: number, deficitKPa: number): number {
  return (lostPerKPa * deficitKPa) / (1 + deficitKPa / tightenKPa) + burntPerDay(tempC);
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
