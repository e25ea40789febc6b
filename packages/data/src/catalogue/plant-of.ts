import {
  type CultivarTraits,
  dayLength,
  dayNumber,
  defaultPlantValues,
  type OnionType,
  typeParameters,
} from '@neckfall/engine';
import type { Cultivar, PublishedNeed } from './cultivar.ts';

/** An onion as the engine grows it; what is its type's own is null, so that onions alike are equal. */
export function plantOf(
  cultivar: Pick<
    Cultivar,
    'type' | 'need' | 'maturity' | 'daysToMaturity' | 'class' | 'bolting' | 'dryMatterShare'
  >,
): { type: OnionType; traits: CultivarTraits } {
  const { type, need, bolting, dryMatterShare } = cultivar;
  const own = defaultPlantValues.types[type];
  const ripening = ripeningFactorOf(cultivar);
  return {
    type,
    traits: {
      criticalPhotoperiodH: need && criticalPhotoperiodH(need, type),
      ripeningFactor: ripening === 1 ? null : ripening,
      boltingFactor: bolting && boltingFactors[bolting],
      dryMatterShare:
        dryMatterShare === null || Math.abs(dryMatterShare - own.dryMatterShare) < 0.005
          ? null
          : dryMatterShare,
    },
  };
}

/** Cold a plant bears before it flowers, against its type's (memory). */
const boltingFactors = { slow: 1.25, ready: 0.8 } as const;

/** Thermal time of ripening against the type's, by maturity printed in words (memory). */
const maturityFactors = { early: 0.92, middle: 1, late: 1.08 } as const;

/**
 * Usual days to maturity, by what they are counted from: sowing in spring of long-day onions 90–110 (seen: University of
 * Illinois Extension); sets 90 (the same); the rest memory.
 */
const usualDays = {
  sowing: { short: 140, intermediate: 110, long: 100 },
  transplanting: { short: 115, intermediate: 110, long: 105 },
  'set-planting': { short: 90, intermediate: 90, long: 90 },
} as const;

/** Printed days are round, so factors go in steps. */
const factorStep = 0.08;

/** 0.84–1.16; days tell more than words. */
function ripeningFactorOf({
  daysToMaturity,
  maturity,
  class: dayLengthClass,
}: Pick<Cultivar, 'daysToMaturity' | 'maturity' | 'class'>): number {
  if (!daysToMaturity) return maturity ? maturityFactors[maturity] : 1;
  const { fromDays, toDays, since } = daysToMaturity;
  const ratio = (fromDays + toDays) / 2 / usualDays[since][dayLengthClass];
  const steps = Math.round((ratio - 1) / factorStep);
  return 1 + factorStep * Math.max(-2, Math.min(2, steps));
}

/** How far beyond the bounds of its type a need may lie and still be believed, h. */
const beyondTypeH = 0.5;

/**
 * A published need as photoperiod to civil twilight: the type's own moved into what was published, in tenths of an hour;
 * null where it is there already, and where the need lies so far out that the type is the better guess.
 */
export function criticalPhotoperiodH(need: PublishedNeed, type: OnionType): number | null {
  // bulbs seen in a field only say that the need was met some time before
  if (need.light === 'onset-seen') return null;
  const { low, high } = typeParameters.criticalPhotoperiodH[type];
  const fromH = photoperiodOf(need.fromH, need);
  const toH = photoperiodOf(need.toH, need);
  if (toH < low - beyondTypeH || fromH > high + beyondTypeH) return null;
  const ownH = defaultPlantValues.types[type].criticalPhotoperiodH;
  const criticalH = Math.round(10 * Math.max(fromH, Math.min(toH, ownH))) / 10;
  return Math.abs(criticalH - ownH) < 0.1 ? null : criticalH;
}

function photoperiodOf(lengthH: number, { light, latitudeDeg }: PublishedNeed): number {
  return light === 'sun-up' && latitudeDeg !== null ? withTwilight(lengthH, latitudeDeg) : lengthH;
}

/**
 * Hours from civil dawn to civil dusk on the day, between midwinter and midsummer, when the sun is up for `sunUpH`. Where
 * it is never up so long, or never so short, the twilight of midsummer or midwinter is added.
 */
export function withTwilight(sunUpH: number, latitudeDeg: number): number {
  const north = Math.abs(latitudeDeg);
  let low = dayNumber(2026, 12, 21);
  let high = dayNumber(2027, 6, 21);
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if (dayLength(north, 0, middle, 'sun-up').hours < sunUpH) low = middle;
    else high = middle;
  }
  return sunUpH + dayLength(north, 0, high, 'civil').hours - dayLength(north, 0, high, 'sun-up').hours;
}
