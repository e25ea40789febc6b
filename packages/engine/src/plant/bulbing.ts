import { ramp } from './thermal.ts';

/** How strongly a photoperiod induces bulbing, 0…1. `lateH` makes up for shade. */
export function photoperiodFactor(photoperiodH: number, criticalH: number, rampH: number): number {
  return ramp(photoperiodH, criticalH, criticalH + rampH);
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
