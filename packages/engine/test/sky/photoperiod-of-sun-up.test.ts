import { getTimes } from 'suncalc';
import { describe, expect, test } from 'vitest';
import { photoperiodOfSunUp } from '../../src/sky/index.ts';

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
      expect(Math.abs(photoperiodOfSunUp(sunUp, latitude) - civil)).toBeLessThan(0.04);
      expect(photoperiodOfSunUp(sunUp, -latitude)).toBeCloseTo(photoperiodOfSunUp(sunUp, latitude), 9);
    }
  });

  test('is that of midsummer for days longer than any', () => {
    const { sunUp, civil } = hours(39, new Date(Date.UTC(2027, 5, 21, 12)));
    expect(photoperiodOfSunUp(16, 39) - 16).toBeCloseTo(civil - sunUp, 1);
  });
});
