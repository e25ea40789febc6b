import { dayLength, dayNumber } from '@neckfall/engine';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { sunUpAtPhotoperiod } from '../../src/facts/place-year.ts';

const newYear = dayNumber(2027, 1, 1);

test('a need in twilight hours becomes the sun-up hours of the same day', () => {
  fc.assert(
    fc.property(fc.integer({ min: -60, max: 60 }), fc.nat({ max: 364 }), (latitudeDeg, i) => {
      const day = newYear + i;
      const civil = dayLength(latitudeDeg, 0, day, 'civil').hours;
      const sunUp = dayLength(latitudeDeg, 0, day, 'sun-up').hours;
      // spring and autumn meet the same light at slightly different twilights
      expect(Math.abs(sunUpAtPhotoperiod(latitudeDeg, 0, civil) - sunUp)).toBeLessThan(0.12);
    }),
    { seed: 20261125, numRuns: 60 },
  );
});
