import { ramp } from './thermal.ts';

/** No plant dies above this, °C. */
export const noHarmAboveC = -4;

/**
 * Temperature of the night, °C, at which plants begin to die, by true leaves made and hardening 0…1:
 * −4 at the loop stage, −6 at two leaves, −11 hardened with three leaves and more, as raised plants have.
 * −11 seen (Brewster 2008 p. 289); the rest memory (hardened −8 to −11, unhardened −4 to −6).
 */
export function killingTempC(leaves: number, hardening: number): number {
  const byLeaves = leaves < 2 ? -4 - leaves : -6 - 2.5 * Math.min(1, leaves - 2);
  return byLeaves - 2.5 * hardening * ramp(leaves, 1, 3);
}

/** Share of the plants alive that one night kills: from none at the killing temperature to all 4 °C below it. */
export function nightKillShare(nightC: number, killingC: number): number {
  return ramp(nightC, killingC, killingC - 4);
}

/**
 * Share of the plants that one night of frost on wet, bare ground lifts out of the soil (frost heave): the small ones,
 * whose roots do not hold yet. It needs a thaw by day, or the ground stays locked. Direction common practice, no
 * source; limits memory, with the size that wintered in Germany and was lost in Oregon.
 *
 * @param wetness smoothed share of wet days
 * @param loss share lost by the smallest plants in the wettest ground
 */
export function heavedShare(
  nightC: number,
  meanC: number,
  wetness: number,
  shootG: number,
  loss: number,
): number {
  if (nightC > -1 || meanC < 0 || shootG > 0.15) return 0;
  return loss * ramp(wetness, 0.25, 0.45) * ramp(shootG, 0.15, 0.06);
}

/** Hardening follows the mean of the last fortnight: none at 14 °C, full at 5 °C (HortScience 28:1092 for the direction). */
export function hardening(recentMeanC: number): number {
  return ramp(recentMeanC, 14, 5);
}

/**
 * Warmth a snow pack keeps at the plant, °C, by its water, mm: thin snow blows off and lies in patches, half a metre
 * shelters from any cold (memory; uncovered autumn plants die about the Great Lakes and live under the snow of Hokkaido).
 */
export function snowShelterC(snowMm: number): number {
  return 10 * ramp(snowMm, 10, 80);
}

/** Water that falls as snow below 0 °C and melts by degree-days, 3 mm °C⁻¹ d⁻¹ (memory: common melt factor). */
export function nextSnowMm(snowMm: number, rainMm: number, meanC: number): number {
  return meanC < 0 ? snowMm + rainMm : Math.max(0, snowMm - 3 * meanC);
}

/** Shelter of covers on a killing night, °C. Fleece 1–3 (Oregon trials, extension); tunnel fitted to low tunnels that
 * kept 65–100 % of autumn plants in zones 4B–5B (Sideman et al. 2014). */
export const coverShelterC = { none: 0, fleece: 3, tunnel: 10 } as const;
