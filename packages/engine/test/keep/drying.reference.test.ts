import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { saturationVapourPressure } from '../../src/bed/index.ts';
import { climateDayOf, dayNumber } from '../../src/calendar/index.ts';
import { neckDryingPerDay } from '../../src/keep/drying-air.ts';
import {
  dryingDays,
  keepingCurve,
  type LiftedWeather,
  noStoreDraw,
  storeClimateOf,
} from '../../src/keep/index.ts';
import { ratesOf } from '../../src/keep/store-rates.ts';
import { climateOf } from '../weather/climates.ts';

const lifted = dayNumber(2027, 8, 10);
const field = climateOf({ latitudeDeg: 43, mean: 24, range: 13, rain: 25, wetDays: 5 });
const damp = climateOf({ latitudeDeg: 53, mean: 16, range: 8, rain: 80, wetDays: 15 });

/** Days in steady air that moves a little. */
const steady = (tempC: number, humidityPct: number) =>
  1 / neckDryingPerDay(saturationVapourPressure(tempC) * (1 - humidityPct / 100), 0.5);
/** Upper end of crops, one in ten: thick necks. */
const slowCrop = Math.exp(0.25 * 1.2816);

describe('drying against what is published', () => {
  test.each([
    [
      'field or shed 2–4 weeks (agriculturistmusa.com; Kansas extension)',
      dryingDays(field, 'outdoors', lifted),
    ],
    ['14–20 days (Oregon State citing Opara 2003)', dryingDays(field, 'under-roof', lifted)],
  ])('%s', (_, { p50 }) => {
    expect(p50).toBeGreaterThanOrEqual(14);
    expect(p50).toBeLessThanOrEqual(28);
  });

  test('about 2 weeks at 27–35 °C and 70–80 % (Canadian guide, farmhutafrica.com)', () => {
    expect(steady(31, 75)).toBeGreaterThan(11);
    expect(steady(31, 75)).toBeLessThan(17);
  });

  test('an overwintered English crop is not dry after 14 days at 30 °C and 60 % (J. Hort. Sci. 57:339)', () => {
    expect(steady(30, 60) * slowCrop).toBeGreaterThan(14);
  });

  test('5–8 % lighter when done (UC Davis; others print 3–5, agriculturistmusa.com, and 3–10, frutas-hortalizas.com)', () => {
    for (const climate of [field, damp])
      for (const place of ['outdoors', 'under-roof', 'warm-room'] as const) {
        const { lossShare } = dryingDays(climate, place, lifted);
        expect(lossShare).toBeGreaterThan(0.05);
        expect(lossShare).toBeLessThan(0.08);
      }
  });

  test.each([
    ['shed', damp],
    ['garage', damp],
    ['shed', field],
    ['kitchen', field],
  ] as const)('by the same law 5–8 % lighter when necks are dry in the usual %s', (store, climate) => {
    const on = climateDayOf(lifted);
    const air = storeClimateOf(climate, store);
    const { neck } = ratesOf(air);
    let days = 0;
    for (let dried = 0; dried < 1; days++) dried += neck[on + days];
    const { massShare } = keepingCurve(
      { keepsMonths: [5, 7], thickNeckShare: 0, bruisedShare: 0 },
      air,
      on,
      noStoreDraw,
    );
    expect(days).toBeLessThan(42);
    expect(1 - massShare[days]).toBeGreaterThan(0.05);
    expect(1 - massShare[days]).toBeLessThan(0.08);
  });
});

/** What the law does not meet, in days, and why: the reason stands in the row, the gap is held. */
test.each([
  ['48 h at 35 °C forced (Canadian guide)', 35, 2],
  ['12 h at 30–45 °C forced (UC Davis)', 45, 0.5],
  ['16–24 h at 46 °C forced (Oregon State)', 46, 1],
] as const)(
  'not met, since air blown through a heap dries otherwise than a tray: %s',
  (_, tempC, published) => {
    expect(steady(tempC, 30)).toBeGreaterThan(published);
  },
);

describe('the weather of the weeks after lifting', () => {
  const weather = (rainMm: number[]): LiftedWeather => ({
    seasons: 10,
    from: () => 0,
    tempMinC: rainMm.map(() => 14),
    tempMaxC: rainMm.map(() => 24),
    rainMm,
  });
  const rains = fc.array(fc.constantFrom(0, 0, 0, 2, 12), { minLength: 61, maxLength: 61 });
  const daysIn = (rain: number[], place: 'outdoors' | 'under-roof') =>
    dryingDays(field, place, lifted, weather(rain)).p50 ?? Number.POSITIVE_INFINITY;

  test('more rain never dries sooner', () => {
    fc.assert(
      fc.property(
        rains,
        rains,
        fc.constantFrom('outdoors' as const, 'under-roof' as const),
        (rain, more, place) => {
          const wetter = rain.map((mm, at) => mm + more[at]);
          expect(daysIn(wetter, place)).toBeGreaterThanOrEqual(daysIn(rain, place));
        },
      ),
      { seed: 7, numRuns: 100 },
    );
  });

  test('rain every day keeps them from drying outdoors, and not under a roof in warm air', () => {
    const wet = Array.from({ length: 61 }, () => 5);
    expect(dryingDays(field, 'outdoors', lifted, weather(wet)).p50).toBeNull();
    expect(dryingDays(field, 'warm-room', lifted, weather(wet)).p50).not.toBeNull();
  });

  test('a warm room is soonest in a damp summer', () => {
    const [out, room] = (['outdoors', 'warm-room'] as const).map(
      (place) => dryingDays(damp, place, lifted).p50 ?? 99,
    );
    expect(room).toBeLessThan(out);
  });
});
