/*
 * Root-zone water balance with a single crop coefficient, a day at a time.
 * Source: FAO Irrigation and Drainage Paper 56 (Allen, Pereira, Raes & Smith 1998), chapter 8.
 * Depletion is the water missing below field capacity, mm: 0 (full) … total available water (wilting).
 */

/** Total available water of the root zone, mm (Eq. 82): `availableMmPerM` of the soil times the root depth. */
export function totalAvailableMm(availableMmPerM: number, rootDepthM: number): number {
  return availableMmPerM * rootDepthM;
}

/** Rain or irrigation that reaches the roots, mm a day: a day's rain under 0.2 ET₀ evaporates (chapter 8). */
export function effectiveRainMm(rainMm: number, referenceEtMm: number): number {
  return rainMm < 0.2 * referenceEtMm ? 0 : rainMm;
}

/**
 * Depletion at the end of a day, mm (Eq. 85–88). Water comes early in the day, as in examples 35 and 38;
 * what exceeds field capacity drains the same day. No runoff, no rise from ground water.
 * @param cropEtMm crop evapotranspiration of the day, already lowered by {@link waterStress}
 */
export function nextDepletion(
  depletionMm: number,
  rainMm: number,
  cropEtMm: number,
  totalAvailableMm: number,
): number {
  const afterRain = depletionMm > rainMm ? depletionMm - rainMm : 0;
  const atEvening = afterRain + cropEtMm;
  return atEvening < totalAvailableMm ? atEvening : totalAvailableMm;
}

/**
 * Water stress coefficient Ks, 1 (none) … 0 (wilting), from the depletion at the start of the day (Eq. 84).
 * @param readilyShare share of the available water drawn without stress, 0.1…0.8
 */
export function waterStress(depletionMm: number, totalAvailableMm: number, readilyShare: number): number {
  if (depletionMm <= readilyShare * totalAvailableMm) return 1;
  return depletionMm >= totalAvailableMm
    ? 0
    : (totalAvailableMm - depletionMm) / ((1 - readilyShare) * totalAvailableMm);
}

/**
 * Share of the available water drawn without stress at another evaporation than 5 mm a day (table 22,
 * footnote). Limits 0.1 and 0.8 — memory: FAO-56.
 */
export function adjustedDepletionShare(shareAt5Mm: number, cropEtMm: number): number {
  const share = shareAt5Mm + 0.04 * (5 - cropEtMm);
  return share < 0.1 ? 0.1 : share > 0.8 ? 0.8 : share;
}
