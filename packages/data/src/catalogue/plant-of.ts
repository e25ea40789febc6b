import { type CultivarTraits, defaultPlantValues, type OnionType } from '@neckfall/engine';
import { criticalPhotoperiodH } from './critical-photoperiod.ts';
import type { Cultivar } from './cultivar.ts';

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
