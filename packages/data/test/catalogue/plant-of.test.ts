import { defaultPlantValues, typeParameters } from '@neckfall/engine';
import { describe, expect, test } from 'vitest';
import { cultivars, plantOf } from '../../src/index.ts';

describe('the plant of an onion', () => {
  test('is of its type, with traits within bounds', () => {
    for (const cultivar of cultivars) {
      const { type, traits } = plantOf(cultivar);
      expect(type).toBe(cultivar.type);
      const { low, high } = typeParameters.criticalPhotoperiodH[type];
      const own = defaultPlantValues.types[type];
      const critical = traits.criticalPhotoperiodH ?? own.criticalPhotoperiodH;
      expect(critical).toBeGreaterThanOrEqual(low - 0.6);
      expect(critical).toBeLessThanOrEqual(high + 0.6);
      expect(traits.ripeningFactor ?? 1).toBeGreaterThanOrEqual(0.8);
      expect(traits.ripeningFactor ?? 1).toBeLessThanOrEqual(1.2);
      expect(traits.boltingFactor ?? 1).toBeGreaterThan(0.5);
      expect(traits.dryMatterShare ?? own.dryMatterShare).toBeLessThanOrEqual(0.17);
    }
  });

  test('that ripens early has the smaller factor', () => {
    const plain = {
      type: 'northern-long',
      class: 'long',
      need: null,
      bolting: null,
      dryMatterShare: null,
    } as const;
    const factor = (maturity: 'early' | 'middle' | 'late' | null, days: number | null) =>
      plantOf({
        ...plain,
        maturity,
        daysToMaturity: days === null ? null : { fromDays: days, toDays: days, since: 'sowing' },
      }).traits.ripeningFactor ?? 1;
    expect(factor('early', null)).toBeLessThan(factor('middle', null));
    expect(factor('middle', null)).toBeLessThan(factor('late', null));
    // University of Illinois Extension: early 90, late 110 days
    expect([factor(null, 90), factor(null, 100), factor(null, 110)]).toEqual([0.92, 1, 1.08]);
    expect(factor('late', 90)).toBe(0.92);
  });

  test('is shared by many: onions alike are equal', () => {
    const plants = cultivars
      .filter(({ kind }) => kind === 'bulb-onion')
      .map((onion) => JSON.stringify(plantOf(onion)));
    expect(new Set(plants).size).toBeLessThan(plants.length / 2);
  });
});
