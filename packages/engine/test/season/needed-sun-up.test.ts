import fc from 'fast-check';
import { expect, test } from 'vitest';
import { dayNumber } from '../../src/calendar/index.ts';
import { neededSunUpH, openSite } from '../../src/season/index.ts';
import { dayLength } from '../../src/sky/index.ts';
import { climateOf } from '../weather/climates.ts';

const newYear = dayNumber(2027, 1, 1);

test('a need in twilight hours becomes the sun-up hours of the same day', () => {
  fc.assert(
    fc.property(fc.integer({ min: -60, max: 60 }), fc.nat({ max: 364 }), (latitudeDeg, i) => {
      const site = openSite({ climate: climateOf({ latitudeDeg, mean: 10 }), years: 1, seed: 1 });
      const civil = dayLength(latitudeDeg, 0, newYear + i, 'civil').hours;
      const sunUp = dayLength(latitudeDeg, 0, newYear + i, 'sun-up').hours;
      // spring and autumn meet the same light at slightly different twilights
      expect(Math.abs(neededSunUpH(site, civil) - sunUp)).toBeLessThan(0.12);
    }),
    { seed: 20261125, numRuns: 60 },
  );
});
