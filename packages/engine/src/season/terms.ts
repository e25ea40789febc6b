import type { Crop } from './crop.ts';
import type { Drivers } from './drivers.ts';
import { unknownFraction } from './fractions.ts';

/** What stays the same through one season: numbers of plan and draw, and the weather as the plant meets it. */
export type Terms = {
  crop: Crop;
  /** Weather of the bare bed, and under the crop's cover; the same where there is none. */
  open: Drivers;
  covered: Drivers;
  /** Index of the start day in the drivers. */
  at: number;
  photoperiodH: Float64Array;
  /** Index of the start day in the photoperiods. */
  photoAt: number;
  /** Day on which the plant was set in its bed or came up there: a cover lies on from then. */
  beddedOn: number;
  phyllochron: number;
  criticalH: number;
  competenceTT: number;
  ripeningTT: number;
  growthFactor: number;
  coldOpen: Float64Array;
  coldCovered: Float64Array;
  ripenOpen: Float64Array;
  ripenCovered: Float64Array;
  warmthOpen: Float64Array;
  warmthCovered: Float64Array;
  referenceEt: Float64Array;
};

/**
 * @param at index of the start day in the drivers
 * @param photoAt index of the start day in `photoperiodH`
 * @param beddedOn days from the start
 */
export function termsOf(
  crop: Crop,
  open: Drivers,
  covered: Drivers,
  at: number,
  photoperiodH: Float64Array,
  photoAt: number,
  beddedOn: number,
): Terms {
  const { growth, type, draw } = crop;
  const terms: Terms = {
    crop,
    open,
    covered,
    at,
    photoperiodH,
    photoAt,
    beddedOn,
    phyllochron: unknownFraction,
    criticalH: unknownFraction,
    competenceTT: unknownFraction,
    ripeningTT: unknownFraction,
    growthFactor: unknownFraction,
    coldOpen: open.cold(type.vernalCeilingC),
    coldCovered: covered.cold(type.vernalCeilingC),
    ripenOpen: open.ripeningTT(type.ripeningBaseC, type.ripeningCapC),
    ripenCovered: covered.ripeningTT(type.ripeningBaseC, type.ripeningCapC),
    warmthOpen: open.bulbingTemp(growth.bulbingBaseC, growth.bulbingFullC),
    warmthCovered: covered.bulbingTemp(growth.bulbingBaseC, growth.bulbingFullC),
    // asked for by nobody, any column will do
    referenceEt: crop.followsWater ? open.referenceEt() : open.rainMm,
  };
  terms.phyllochron = growth.phyllochron * draw.phyllochronFactor;
  terms.criticalH = type.criticalPhotoperiodH + draw.criticalShiftH + crop.shadePenaltyH;
  // leaves and age are one clock: a plant quick to leaf is soon big enough to bulb
  terms.competenceTT = growth.competenceTT * type.competenceShare * draw.phyllochronFactor;
  terms.ripeningTT = type.ripeningTT * draw.ripeningFactor * crop.ripeningFactor;
  terms.growthFactor = draw.growthFactor;
  return terms;
}
