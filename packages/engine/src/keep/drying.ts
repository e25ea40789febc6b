/** Where onions dry once they are lifted. */
export const dryingPlaces = ['outdoors', 'under-roof', 'warm-room'] as const;
export type DryingPlace = (typeof dryingPlaces)[number];

/** Days from lifting until necks are tight, 1, 5 and 9 of ten years below; null where they don't get there. */
export type DryingDays = {
  place: DryingPlace;
  p10: number | null;
  p50: number | null;
  p90: number | null;
  /** Share of the weight lost by then, 0…1. */
  lossShare: number;
};
