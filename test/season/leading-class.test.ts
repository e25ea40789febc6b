import { expect, test } from 'vitest';
import { dayNumber, openSite, surveyPlace } from '../../packages/engine/src/index.ts';
import { climateOf } from './places.ts';

// Common practice, no source: winters are mild here, days in summer long. A hardiness zone would say short-day.
test.each([
  ['London', 51.51, -0.13],
  ['Dublin', 53.35, -6.26],
  ['Seattle', 47.61, -122.33],
  ['Talgarth', 52.08, -3.13],
])('short-day types do not lead at %s', (_, latitude, longitude) => {
  const site = openSite({ climate: climateOf(latitude, longitude), years: 30, seed: 1 });
  expect(surveyPlace(site, dayNumber(2027, 2, 1)).classes[0].class).not.toBe('short');
});

// Common practice, no source: near the equator only short-day types bulb.
test('short-day types lead at Nairobi', () => {
  const site = openSite({ climate: climateOf(-1.29, 36.82), years: 30, seed: 1 });
  expect(surveyPlace(site, dayNumber(2027, 2, 1)).classes[0].class).toBe('short');
});
