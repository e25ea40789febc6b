/** Days this far above the need ripen no sooner, h; nor does more than so much beyond. */
const idleH = 2;
const mostH = 6;

/** Longer days ripen sooner: factor on the ripening rate (shape ours, slope fitted). */
export function ripeningPhotoperiodFactor(photoperiodH: number, criticalH: number, slope: number): number {
  const beyond = photoperiodH - criticalH - idleH;
  return beyond <= 0 ? 1 : 1 + slope * (beyond < mostH ? beyond : mostH);
}

/**
 * Dense stands ripen sooner: tops fall 7–11 days earlier at 60–140 than at 20 plants per m².
 * Source: Rumpel & Felczyński; Ituporanga and Beyeda trials.
 */
export function ripeningDensityFactor(densityPerM2: number, slope: number): number {
  return 1 + slope * Math.log(densityPerM2 / 40);
}

/** Share of new dry matter that goes to the bulb, 0.4 at onset to 1 by ripening 0.3 (Wageningen seed-onion set, shape). */
export function bulbShare(ripening: number): number {
  return ripening < 0.3 ? 0.4 + 2 * ripening : 1;
}

/** Share of the leaf area still working: all to ripening 0.3, then falling to 15 % at neck fall (memory). */
export function greenShare(ripening: number): number {
  return ripening < 0.3 ? 1 : 1 - (0.85 / 0.7) * (ripening - 0.3);
}

/** Share of the shoot's dry matter that moves into the bulb as the tops die (memory; harvest index about 0.8). */
export const finalTransferShare = 0.3;

/** Leaves go on appearing until this ripening, at this share of the earlier rate (memory; 1–2 short leaves seen, Brewster 2008 p. 40). */
export const lastLeavesRipening = 0.25;
/** See {@link lastLeavesRipening}. */
export const lastLeavesRate = 0.6;

/**
 * Days under short photoperiod or cold that turn a bulbing plant back to leaves before it is three fifths ripe.
 * Direction: Kato 1964, Brewster 2008 p. 142; bulbing stops when days fall below the critical length (Ikeda et al.
 * 2020), half an hour is left for weather and plants; other values memory.
 */
export const reversal = { days: 10, shortfallH: 0.5, coldC: 10, beforeRipening: 0.6 } as const;
