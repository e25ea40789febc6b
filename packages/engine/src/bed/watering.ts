import type { WateringWay } from './ground.ts';

/**
 * Share of the water let out that comes to the roots. Memory: FAO Irrigation Water Management Training Manual 4,
 * field application efficiency 75 % from above and 90 % by drip; a can or a hose is taken as from above.
 */
export const efficiencyOf: Readonly<Record<WateringWay, number>> = { can: 0.75, hose: 0.75, drip: 0.9 };

/** Way of watering where nothing is said: from above. */
export const usualWatering: WateringWay = 'can';

/** Share of the ground that drip wets: FAO-56 table 20 gives 0.3–0.4; its middle is used. */
const dripWetted = 0.35;

/** Share of the ground that is wetted, fw (FAO-56 table 20). */
export function wettedShare(last: WateringWay | 'rain'): number {
  return last === 'drip' ? dripWetted : 1;
}
