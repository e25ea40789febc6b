import type { WateringWay } from './ground.ts';
import { wettedShare } from './watering.ts';

/*
 * Evaporation from the ground between plants, by the dual crop coefficient.
 * Source: FAO Irrigation and Drainage Paper 56 (Allen, Pereira, Raes & Smith 1998), chapter 7. Water drawn from the
 * drying layer by roots (Tew of Eq. 77) is left out, as in its examples.
 */

/** Evaporation reduction Kr of a drying layer, 1 (wet) … 0 (Eq. 74); depletion and both limits in mm. */
export function evaporationReduction(layerMm: number, readilyMm: number, totalMm: number): number {
  if (layerMm <= readilyMm) return 1;
  return layerMm >= totalMm ? 0 : (totalMm - layerMm) / (totalMm - readilyMm);
}

/** Soil evaporation coefficient Ke (Eq. 71). */
export function evaporationCoefficient(
  reduction: number,
  basal: number,
  largest: number,
  exposed: number,
): number {
  const byEnergy = reduction * (largest - basal);
  const byGround = exposed * largest;
  return byEnergy < byGround ? byEnergy : byGround;
}

/** The smallest share of the ground that lies open (memory: FAO-56 keeps 1 − fc at 0.01 and more). */
const leastExposed = 0.01;

/**
 * Share of the ground that is both wetted and open to the sky, few (Eq. 75): all that is not under leaves, unless only a
 * part was wetted. Of what drip under the leaves wets, two thirds of their cover lie in shade (chapter 7, example 34).
 * @param cover share of the ground under leaves, 0…1
 * @param last how it was wetted last
 * @param wetted share that watering wets; that of its way where nothing else is known
 */
export function exposedShare(
  cover: number,
  last: WateringWay | 'rain',
  wetted: number = wettedShare(last),
): number {
  const open = cover < 1 - leastExposed ? 1 - cover : leastExposed;
  const wet = last === 'drip' ? wetted * (1 - (2 / 3) * cover) : wetted;
  return wet < open ? wet : open;
}
