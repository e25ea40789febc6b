import { ramp } from './thermal.ts';

/** How strongly a photoperiod induces bulbing, 0…1: nothing at the need, in full `rampH` above it. */
export function photoperiodFactor(photoperiodH: number, criticalH: number, rampH: number): number {
  return ramp(photoperiodH, criticalH, criticalH + rampH);
}

/**
 * Share of the usual age that a kind asks for before it can bulb: all within 2 h of its need, a third from 4½ h on. Days
 * far above the need turn small plants: short-day kinds set out in the north make sets, not onions, and even seedlings
 * bulb once days are long enough for them (direction seen: Embrapa; figures ours).
 */
export function ageNeed(hoursAboveNeed: number): number {
  return 1 - 0.67 * ramp(hoursAboveNeed, 2, 4.5);
}

/**
 * Hours by which shade lifts the day length a type needs.
 * Source: Wickramasinghe et al. 2000: at 12 h, 25 % shade let bulbs form and 50 % prevented them; the straight
 * line between is ours.
 */
export function shadePenaltyH(shadeShare: number): number {
  return shadeShare <= 0.25 ? 0 : 2.4 * (shadeShare - 0.25);
}

/** Crowded stands bulb a little sooner (red : far-red, Mondal et al. 1986 III; size of the effect fitted). */
export function canopyHaste(leafAreaIndex: number): number {
  return 1 + 0.06 * (leafAreaIndex < 3 ? leafAreaIndex : 3);
}
