import { type SoilTexture, soils } from './soil-texture.ts';

/*
 * What dry (bulb) onions ask of a bed's water. Source: FAO Irrigation and Drainage Paper 56 (1998),
 * tables 12 and 17 (coefficients, height) and 22 (roots, depletion share).
 */

/** Crop coefficients, dimensionless: bare to a tenth covered; full cover; the day tops are down. */
const initial = 0.7;
const middle = 1.05;
const end = 0.75;

/** Cover at the end of the initial stage and at full cover: FAO-56 chapter 6 and table 21. */
const initialCover = 0.1;
const fullCover = 0.8;

/** Leaf area begins to fall at this share of ripening (see the plant's ripening stage). */
const lateFrom = 0.3;

/**
 * Share of available water drawn without stress at 5 mm a day: 0.30, a little more on sand, less on clay.
 */
export function onionReadilyShare(texture: SoilTexture): number {
  return 0.3 * soils[texture].readilyFactor;
}

/**
 * Single crop coefficient by development instead of days: it climbs with the ground the leaves cover and
 * sinks to the end value as the crop ripens. A stand too thin to cover the bed stays below the middle value.
 * @param groundCover share of the ground under leaves, 0…1
 * @param ripening 0 until bulbs start, 1 when tops are down
 */
export function onionCropCoefficient(groundCover: number, ripening: number): number {
  if (ripening > lateFrom) {
    const late = middle + (end - middle) * ((ripening - lateFrom) / (1 - lateFrom));
    const byCover = coverCoefficient(groundCover);
    return late < byCover ? late : byCover;
  }
  return coverCoefficient(groundCover);
}

const perCover = (middle - initial) / (fullCover - initialCover);

function coverCoefficient(groundCover: number): number {
  if (groundCover <= initialCover) return initial;
  return groundCover >= fullCover ? middle : initial + perCover * (groundCover - initialCover);
}

/** Basal coefficients, without evaporation from bare ground: table 17. */
const basalInitial = 0.15;
const basalMiddle = 0.95;
const basalEnd = 0.65;

/**
 * Basal coefficient Kcb by development, which climbs and sinks with cover and ripening as the single one does.
 * @param groundCover share of the ground under leaves, 0…1
 * @param ripening 0 until bulbs start, 1 when tops are down
 */
export function onionBasalCoefficient(groundCover: number, ripening: number): number {
  const grown = basalInitial + (basalMiddle - basalInitial) * shareGrown(groundCover);
  if (ripening <= lateFrom) return grown;
  const late = basalMiddle + (basalEnd - basalMiddle) * ((ripening - lateFrom) / (1 - lateFrom));
  return late < grown ? late : grown;
}

/** Height of a crop at full cover, m (table 12). */
const grownHeightM = 0.4;

/** Height of the crop, m: in step with its cover, an assumption. */
export function onionHeightM(groundCover: number): number {
  return groundCover >= fullCover ? grownHeightM : (grownHeightM * groundCover) / fullCover;
}

/** Way from the end of the initial stage to full cover, 0…1. */
function shareGrown(groundCover: number): number {
  if (groundCover <= initialCover) return 0;
  return groundCover >= fullCover ? 1 : (groundCover - initialCover) / (fullCover - initialCover);
}

/** Root depth for planning, m: table 22 gives 0.3–0.6 for grown onions, example 36 takes 0.4. */
const grownRootM = 0.4;
/** Effective root depth of a seedling, m. Memory: FAO-56, 0.15–0.20 m in the initial stage. */
const seedlingRootM = 0.15;
/** Leaves made when roots have reached their depth: an assumption without source. */
const grownLeaves = 8;

const rootPerLeafM = (grownRootM - seedlingRootM) / grownLeaves;

/** Effective root depth, m, by leaves made. */
export function onionRootDepthM(leavesMade: number): number {
  return leavesMade >= grownLeaves ? grownRootM : seedlingRootM + rootPerLeafM * leavesMade;
}
