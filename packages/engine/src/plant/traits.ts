import type { OnionType } from './kinds.ts';
import type { PlantValues, TypeValues } from './parameters.ts';

/** How a cultivar differs from its type. What is null is the type's own. */
export type CultivarTraits = {
  /** Photoperiod (civil twilight) above which bulbing is induced, h. */
  criticalPhotoperiodH: number | null;
  /** Thermal time from onset to neck fall against the type's, –. */
  ripeningFactor: number | null;
  /** Cold that makes half the plants bolt against the type's, –: above 1 is slower to bolt. */
  boltingFactor: number | null;
  /** Dry matter of the bulb, share of fresh mass. */
  dryMatterShare: number | null;
};

/** A type's values with a cultivar's traits put in. */
export function plantValuesOf(
  values: PlantValues,
  { type, traits }: { type: OnionType; traits: CultivarTraits | null },
): TypeValues {
  const own = values.types[type];
  if (!traits) return own;
  return {
    ...own,
    criticalPhotoperiodH: traits.criticalPhotoperiodH ?? own.criticalPhotoperiodH,
    ripeningTT: own.ripeningTT * (traits.ripeningFactor ?? 1),
    vernalHalfD: own.vernalHalfD * (traits.boltingFactor ?? 1),
    dryMatterShare: traits.dryMatterShare ?? own.dryMatterShare,
  };
}
