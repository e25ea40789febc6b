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

  // Homes and their middles: memory.
  test.each([
    ['tropical-short', 13],
    ['short', 14],
    ['intermediate', 14.5],
    ['early-long', 14.8],
    ['northern-long', 15.4],
  ] as const)('is that of its type in the middle of its home, %s at %d h', (type, middleH) => {
    const steep = { ...defaultPlantValues.types[type], photoperiodPerH: 1 };
    const values = { ...defaultPlantValues, types: { ...defaultPlantValues.types, [type]: steep } };
    const at = (hours: number) => valuesAt(values, hours).types[type].criticalPhotoperiodH;
    expect(at(middleH)).toBeCloseTo(own(type), 12);
    expect(at(middleH + 0.2)).toBeCloseTo(own(type) + 0.2, 12);
  });

  test('turns to that of the strangers over 0.4 h below its home', () => {
    const steep = { ...defaultPlantValues.types['early-long'], photoperiodPerH: 1 };
    const values = { ...defaultPlantValues, types: { ...defaultPlantValues.types, 'early-long': steep } };
    const beyond = (hours: number) =>
      valuesAt(values, hours).types['early-long'].criticalPhotoperiodH - steep.criticalPhotoperiodH;
    // home from 14.2 h, strangers of 15.7 h, middle 14.8 h
    expect(beyond(14.2)).toBeCloseTo(-0.6, 12);
    expect(beyond(14)).toBeCloseTo((14.2 + 15.7) / 2 - 14.8, 12);
    expect(beyond(13.8)).toBeCloseTo(0.9, 12);
    expect(beyond(12)).toBeCloseTo(0.9, 12);
  });
});
