import { defaultPlantValues } from '@neckfall/engine';
import fc from 'fast-check';
import { getTimes } from 'suncalc';
import { describe, expect, test } from 'vitest';
import { criticalPhotoperiodH, withTwilight } from '../../src/catalogue/critical-photoperiod.ts';

/** Sun-up hours and hours to civil twilight on a day, by an independent library. */
function hours(latitude: number, date: Date) {
  const { sunrise, sunset, dawn, dusk } = getTimes(date, latitude, 0);
  const between = (from: Date | null, to: Date | null) => (Number(to) - Number(from)) / 3_600_000;
  return { sunUp: between(sunrise, sunset), civil: between(dawn, dusk) };
}

describe('twilight added to a day with so much sun', () => {
  test.each([20, 31, 39, 45, 52])('at %d° agrees with another almanac', (latitude) => {
    for (let day = 5; day <= 165; day += 20) {
      const { sunUp, civil } = hours(latitude, new Date(Date.UTC(2027, 0, day, 12)));
      // the day whose sun-up hours are nearest may be a day off
      expect(Math.abs(withTwilight(sunUp, latitude) - civil)).toBeLessThan(0.04);
      expect(withTwilight(sunUp, -latitude)).toBeCloseTo(withTwilight(sunUp, latitude), 9);
    }
  });

  test('is that of midsummer for days longer than any', () => {
    const { sunUp, civil } = hours(39, new Date(Date.UTC(2027, 5, 21, 12)));
    expect(withTwilight(16, 39) - 16).toBeCloseTo(civil - sunUp, 1);
  });
});

describe('a published need', () => {
  const sun = (hours: number) => ({ fromH: hours, toH: hours, light: 'sun-up', latitudeDeg: 39 }) as const;

  test('of 13 h of sun in Maryland is 13.9 h to twilight', () => {
    expect(criticalPhotoperiodH(sun(13), 'early-long')).toBe(13.9);
  });

  test('counts lamps and published twilight as they are', () => {
    const need = { fromH: 13.7, toH: 13.7, latitudeDeg: null };
    expect(criticalPhotoperiodH({ ...need, light: 'lamps' }, 'early-long')).toBe(13.7);
    expect(criticalPhotoperiodH({ ...need, light: 'twilight', latitudeDeg: -37 }, 'early-long')).toBe(13.7);
  });

  test('as a span leaves the type alone when its own lies within', () => {
    for (const [type, { criticalPhotoperiodH: own }] of Object.entries(defaultPlantValues.types)) {
      const span = { fromH: own - 0.3, toH: own + 0.3, light: 'lamps', latitudeDeg: null } as const;
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
