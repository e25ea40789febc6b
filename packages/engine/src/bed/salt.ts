/*
 * Salt in irrigation water, as electrical conductivity, dS/m: of the water (ECw), and of a soil paste that stands
 * at balance with it (ECe). Source: FAO-56 (Allen, Pereira, Raes & Smith 1998), chapter 8, unless another is named.
 */

/** What a crop bears of salt. */
export type SaltTolerance = {
  /** ECe up to which it loses nothing, dS/m. */
  thresholdDsPerM: number;
  /** Yield lost for every dS/m more, %. */
  slopePct: number;
  /** Share of the yield lost per share of its water not used, whole season (Ky, table 24). */
  yieldResponse: number;
};

/** Onions: FAO-56 table 23, as Maas 1990 (sensitive); Ky of table 24, from FAO-33. */
export const onionSaltTolerance: SaltTolerance = { thresholdDsPerM: 1.2, slopePct: 16, yieldResponse: 1.1 };

/** Share of the yield left in a soil of some salt, 0…1 (Eq. 89). */
export function saltYieldShare(soilDsPerM: number, { thresholdDsPerM, slopePct }: SaltTolerance): number {
  const lost = ((soilDsPerM - thresholdDsPerM) * slopePct) / 100;
  return lost <= 0 ? 1 : lost >= 1 ? 0 : 1 - lost;
}

/** Stress coefficient by salt alone, 0…1 (Eq. 91); that by thirst multiplies it (Eq. 92). */
export function saltStress(soilDsPerM: number, tolerance: SaltTolerance): number {
  const { thresholdDsPerM, slopePct, yieldResponse } = tolerance;
  const lost = ((soilDsPerM - thresholdDsPerM) * slopePct) / (100 * yieldResponse);
  return lost <= 0 ? 1 : lost >= 1 ? 0 : 1 - lost;
}

/**
 * Most that is given over to wash out salt. FAO-29 (Ayers & Westcot 1985) rests its table of crops on 15–20 %; from
 * 15 % its onion row follows (water of 0.8, 1.2, 1.8 and 2.9 dS/m for 100, 90, 75 and 50 % — memory).
 */
const mostLeaching = 0.15;

/** Share of the water given that has to run through to keep the soil at a crop's threshold: LR = ECw / (5 ECe − ECw) (FAO-29). */
export function leachingShare(waterDsPerM: number, { thresholdDsPerM }: SaltTolerance): number {
  const needed = waterDsPerM / (5 * thresholdDsPerM - waterDsPerM);
  return needed < 0 || needed > mostLeaching ? mostLeaching : needed;
}

/** Salt of the soil that watering comes to when a share of it runs through, dS/m (Eq. 93). */
export function soilSaltDsPerM(waterDsPerM: number, leaching: number): number {
  return leaching > 0 ? (((1 + leaching) / leaching) * waterDsPerM) / 5 : 0;
}
