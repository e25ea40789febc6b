import { describe, expect, it } from 'vitest';
import { type CultivarTraits, defaultPlantValues, plantValuesOf } from '../../src/plant/index.ts';

const none: CultivarTraits = {
  criticalPhotoperiodH: null,
  ripeningFactor: null,
  boltingFactor: null,
  dryMatterShare: null,
};
const own = defaultPlantValues.types['early-long'];

describe("a cultivar's traits", () => {
  it('leave the type as it is where nothing is known', () => {
    expect(plantValuesOf(defaultPlantValues, { type: 'early-long', traits: null })).toBe(own);
    expect(plantValuesOf(defaultPlantValues, { type: 'early-long', traits: none })).toEqual(own);
  });

  it('replace the day length and dry matter and scale ripening and bolting', () => {
    const traits = {
      criticalPhotoperiodH: 14,
      ripeningFactor: 0.9,
      boltingFactor: 1.25,
      dryMatterShare: 0.14,
    };
    const found = plantValuesOf(defaultPlantValues, { type: 'early-long', traits });
    expect(found.criticalPhotoperiodH).toBe(14);
    expect(found.dryMatterShare).toBe(0.14);
    expect(found.ripeningTT).toBeCloseTo(0.9 * own.ripeningTT, 9);
    expect(found.vernalHalfD).toBeCloseTo(1.25 * own.vernalHalfD, 9);
    expect(found.minimumLeaves).toBe(own.minimumLeaves);
  });
});
