import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { defaultPlantValues, onionTypes, valuesAt } from '../../src/plant/index.ts';

const needAt = (type: (typeof onionTypes)[number], longestDayH: number) =>
  valuesAt(defaultPlantValues, longestDayH).types[type].criticalPhotoperiodH;
const own = (type: (typeof onionTypes)[number]) => defaultPlantValues.types[type].criticalPhotoperiodH;

describe('the day length that the kinds of a place ask for', () => {
  test('never falls as summers get longer, where all types are at home or farther north', () => {
    const hours = fc.double({ min: 15.3, max: 20, noNaN: true });
    fc.assert(
      fc.property(fc.constantFrom(...onionTypes), hours, hours, (type, a, b) => {
        expect(needAt(type, Math.max(a, b))).toBeGreaterThanOrEqual(needAt(type, Math.min(a, b)));
      }),
      { seed: 20261128 },
    );
  });

  test('is longer in the north of the home of a type than in its south', () => {
    // Direction seen: earliness within a region follows the need (Abe et al. 1955).
    expect(needAt('northern-long', 16.6)).toBeGreaterThan(needAt('northern-long', 15.4));
    expect(needAt('intermediate', 15.4)).toBeGreaterThan(needAt('intermediate', 14));
  });

  test('is that of home where a type does not belong, nearer the equator, or longer', () => {
    for (const type of onionTypes) expect(needAt(type, 11.9)).toBeGreaterThanOrEqual(own(type) - 1e-9);
    expect(needAt('early-long', 13.5)).toBeGreaterThan(own('early-long'));
  });

  test('told again for the same place stays', () => {
    for (const longestDayH of [12.5, 14.3, 15.6, 16.7]) {
      const once = valuesAt(defaultPlantValues, longestDayH);
      expect(valuesAt(once, longestDayH)).toEqual(once);
    }
  });
});
