import { defaultPlantValues } from '@neckfall/engine';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { criticalPhotoperiodH } from '../../src/catalogue/critical-photoperiod.ts';

describe('a published need', () => {
  /** From the length that was published down to where bulbs begin. */
  const begins = defaultPlantValues.growth.photoperiodRampH / 2;
  const sun = (hours: number) => ({ fromH: hours, toH: hours, light: 'sun-up', latitudeDeg: 39 }) as const;

  /** A need this near to the type's own is the type's own. */
  const nearH = 0.16;
  const own = defaultPlantValues.types['early-long'].criticalPhotoperiodH;

  test('of 13 h of sun in Maryland is 13.9 h to twilight', () => {
    const criticalH = criticalPhotoperiodH(sun(13), 'early-long') ?? own;
    expect(Math.abs(criticalH - (13.9 - begins))).toBeLessThan(nearH);
  });

  test('counts lamps and published twilight as they are', () => {
    const need = { fromH: 13.9, toH: 13.9 };
    const lamps = criticalPhotoperiodH({ ...need, light: 'lamps', latitudeDeg: null }, 'early-long');
    const twilight = criticalPhotoperiodH({ ...need, light: 'twilight', latitudeDeg: -37 }, 'early-long');
    expect(lamps).toBe(twilight);
    expect(Math.abs((lamps ?? own) - (13.9 - begins))).toBeLessThan(nearH);
  });

  test('as a span leaves the type alone when its own lies within', () => {
    for (const [type, { criticalPhotoperiodH: own }] of Object.entries(defaultPlantValues.types)) {
      const middle = own + begins;
      const span = { fromH: middle - 0.3, toH: middle + 0.3, light: 'lamps', latitudeDeg: null } as const;
      expect(criticalPhotoperiodH(span, type as 'short')).toBeNull();
    }
  });

  test('far from the type, and bulbs seen in a field, leave the type alone', () => {
    expect(criticalPhotoperiodH(sun(16), 'short')).toBeNull();
    expect(criticalPhotoperiodH(sun(9), 'northern-long')).toBeNull();
    const seen = { fromH: 12.1, toH: 12.1, light: 'onset-seen', latitudeDeg: 30.6 } as const;
    expect(criticalPhotoperiodH(seen, 'short')).toBeNull();
  });

  test('that is longer never makes an onion earlier', () => {
    const type = fc.constantFrom(...(Object.keys(defaultPlantValues.types) as 'short'[]));
    fc.assert(
      fc.property(
        type,
        fc.double({ min: 10, max: 17, noNaN: true }),
        fc.double({ min: 0, max: 2, noNaN: true }),
        (type, from, more) => {
          const first = criticalPhotoperiodH(sun(from), type);
          const second = criticalPhotoperiodH(sun(from + more), type);
          // 0.1 h: needs are told in tenths
          if (first !== null && second !== null) expect(second).toBeGreaterThanOrEqual(first - 0.1);
        },
      ),
      { seed: 20270503 },
    );
  });
});
