import * as astronomy from 'astronomy-engine';
import fc from 'fast-check';
import { getTimes } from 'suncalc';
import { describe, expect, it } from 'vitest';
import { dayNumber } from '../../src/calendar/index.ts';
import { type DayLengthConvention, dayLength, fillDayLengths } from '../../src/sky/index.ts';

/** One latitude per band in both hemispheres and the equator, longitudes on both sides of both meridians. */
const latitudes = [
  -65, -62.5, -60, -54.8, -45, -34.6, -23.4, -12, 0, 8, 19.4, 28, 37, 45, 52, 56, 60, 62.5, 65,
];
const longitudes = [-179.5, -76, 0, 77.5, 179.5];

/** Solstices, equinoxes, leap day, near and far sun, and the first and fifteenth of each month. */
const days = [
  dayNumber(2024, 2, 29),
  dayNumber(2027, 1, 3),
  dayNumber(2027, 7, 5),
  dayNumber(2027, 3, 20),
  dayNumber(2027, 6, 21),
  dayNumber(2027, 9, 23),
  dayNumber(2027, 12, 22),
  dayNumber(2100, 3, 1),
  ...Array.from({ length: 12 }, (_, month) => dayNumber(2026, month + 1, 15)),
  ...Array.from({ length: 12 }, (_, month) => dayNumber(2028, month + 1, 1)),
];

type Band = 'to 60°' | '60° to 65°';

/**
 * Field → mean and largest difference allowed, minutes. What remains: the sun's own day is up to half a minute
 * longer or shorter than 24 h (late December), the references give the disc its true size of the day, and one
 * declination stands for sunrise and sunset.
 */
const tolerance: Record<Band, { mean: number; max: number }> = {
  'to 60°': { mean: 0.2, max: 1 },
  '60° to 65°': { mean: 0.3, max: 2 },
};

type Place = { latitude: number; longitude: number };
type Reference = (place: Place, noon: Date, convention: DayLengthConvention) => number;

type Moment = Date | null | undefined;
const hoursBetween = (from: Moment, to: Moment) =>
  from && to ? (to.getTime() - from.getTime()) / 3.6e6 : Number.NaN;

const references: Record<string, Reference> = {
  'astronomy-engine': ({ latitude, longitude }, noon, convention) => {
    const observer = new astronomy.Observer(latitude, longitude, 0);
    const event = (direction: 1 | -1) =>
      convention === 'civil'
        ? astronomy.SearchAltitude(astronomy.Body.Sun, observer, direction, noon, -direction, -6)
        : astronomy.SearchRiseSet(astronomy.Body.Sun, observer, direction, noon, -direction);
    return hoursBetween(event(1)?.date, event(-1)?.date);
  },
  suncalc: ({ latitude, longitude }, noon, convention) => {
    const times = getTimes(noon, latitude, longitude);
    return convention === 'civil'
      ? hoursBetween(times.dawn, times.dusk)
      : hoursBetween(times.sunrise, times.sunset);
  },
};

const noonAt = (longitude: number, day: number) => new Date((day + 0.5 - longitude / 360) * 86_400_000);

/** Whether the sun crosses the altitude that day, by suncalc. */
function hasDawn({ latitude, longitude }: Place, day: number, convention: DayLengthConvention): boolean {
  const times = getTimes(noonAt(longitude, day), latitude, longitude);
  return (convention === 'civil' ? times.dawn : times.sunrise) !== null;
}

/** Days within three of polar day or night hang on a hair's breadth of altitude and are left out. */
function isNearPolar(place: Place, day: number, convention: DayLengthConvention): boolean {
  return [-3, -2, -1, 0, 1, 2, 3].some((shift) => !hasDawn(place, day + shift, convention));
}

describe.each(Object.keys(references))('day length agrees with %s', (name) => {
  it.each(['sun-up', 'civil'] as const)('%s', (convention) => {
    const errors: Record<Band, number[]> = { 'to 60°': [], '60° to 65°': [] };
    const nearPolar: Record<Band, number> = { 'to 60°': 0, '60° to 65°': 0 };
    for (const latitude of latitudes) {
      const band = Math.abs(latitude) <= 60 ? 'to 60°' : '60° to 65°';
      for (const longitude of longitudes) {
        for (const day of days) {
          const place = { latitude, longitude };
          if (isNearPolar(place, day, convention)) {
            nearPolar[band]++;
            continue;
          }
          const expected = references[name](place, noonAt(longitude, day), convention);
          errors[band].push(60 * Math.abs(dayLength(latitude, longitude, day, convention).hours - expected));
        }
      }
    }
    // No row is skipped but the excepted: twilight lasts all night in midsummer from 60.6° on, and the sun
    // itself rises and sets every day to 65°.
    const rowsIn = (band: Band) =>
      latitudes.filter((latitude) => Math.abs(latitude) <= 60 === (band === 'to 60°')).length *
      longitudes.length *
      days.length;
    expect(nearPolar['to 60°']).toBe(0);
    expect(errors['to 60°']).toHaveLength(rowsIn('to 60°'));
    expect(errors['60° to 65°']).toHaveLength(rowsIn('60° to 65°') - nearPolar['60° to 65°']);
    if (convention === 'sun-up') expect(nearPolar['60° to 65°']).toBe(0);
    else expect(nearPolar['60° to 65°']).toBeLessThan(rowsIn('60° to 65°') / 4);
    for (const band of ['to 60°', '60° to 65°'] as const) {
      const mean = errors[band].reduce((sum, error) => sum + error, 0) / errors[band].length;
      expect(mean, `mean, ${band}`).toBeLessThanOrEqual(tolerance[band].mean);
      expect(Math.max(...errors[band]), `largest, ${band}`).toBeLessThanOrEqual(tolerance[band].max);
    }
  });
});

describe('day length', () => {
  const place = {
    latitude: fc.double({ min: -90, max: 90, noNaN: true }),
    longitude: fc.double({ min: -180, max: 180, noNaN: true }),
    day: fc.integer({ min: -25_567, max: 84_006 }),
    convention: fc.constantFrom<DayLengthConvention>('sun-up', 'civil'),
  };

  it('is a typed value in polar day and polar night', () => {
    expect(dayLength(70, 20, dayNumber(2027, 6, 21), 'sun-up')).toEqual({ hours: 24, kind: 'polar-day' });
    expect(dayLength(70, 20, dayNumber(2027, 12, 21), 'sun-up')).toEqual({ hours: 0, kind: 'polar-night' });
    expect(dayLength(-90, 0, dayNumber(2027, 12, 21), 'civil')).toEqual({ hours: 24, kind: 'polar-day' });
  });

  it.each(['sun-up', 'civil'] as const)(
    'beyond the circles is polar when suncalc finds no dawn (%s)',
    (convention) => {
      let polar = 0;
      for (const latitude of [-85, -70, 67, 70, 78]) {
        for (let day = dayNumber(2027, 1, 1); day <= dayNumber(2027, 12, 31); day += 4) {
          const place = { latitude, longitude: 20 };
          const crossings = [-3, 0, 3].map((shift) => hasDawn(place, day + shift, convention));
          if (new Set(crossings).size > 1) continue;
          if (!crossings[0]) polar++;
          const { kind } = dayLength(latitude, 20, day, convention);
          expect(kind === 'rises-and-sets', `latitude ${latitude}, day ${day}`).toBe(crossings[0]);
        }
      }
      expect(polar).toBeGreaterThan(100);
    },
  );

  it('lies within 0…24 h anywhere, and its kind says which end it reached', () => {
    fc.assert(
      fc.property(fc.record(place), ({ latitude, longitude, day, convention }) => {
        const { hours, kind } = dayLength(latitude, longitude, day, convention);
        const expected = hours === 24 ? 'polar-day' : hours === 0 ? 'polar-night' : 'rises-and-sets';
        return hours >= 0 && hours <= 24 && kind === expected;
      }),
      { seed: 20_270_101 },
    );
  });

  it('is never shorter with twilight than without', () => {
    fc.assert(
      fc.property(
        fc.record(place),
        ({ latitude, longitude, day }) =>
          dayLength(latitude, longitude, day, 'civil').hours >=
          dayLength(latitude, longitude, day, 'sun-up').hours,
      ),
      { seed: 20_270_102 },
    );
  });

  it('of a run of days is that of each day', () => {
    fc.assert(
      fc.property(fc.record(place), ({ latitude, longitude, day, convention }) => {
        const run = new Float64Array(5);
        fillDayLengths(latitude, longitude, day, convention, run);
        run.forEach((hours, i) => {
          expect(hours).toBeCloseTo(dayLength(latitude, longitude, day + i, convention).hours, 6);
        });
      }),
      { seed: 20_270_103 },
    );
  });

  it('refuses a place that is not on Earth, naming the value', () => {
    const day = dayNumber(2027, 6, 21);
    expect(() => dayLength(90.1, 0, day, 'civil')).toThrow('latitude must be −90…90 degrees, got 90.1');
    expect(() => dayLength(0, Number.NaN, day, 'civil')).toThrow(
      'longitude must be −180…180 degrees, got NaN',
    );
    expect(() => dayLength(0, 0, Number.NaN, 'civil')).toThrow('day must be a day number, got NaN');
  });
});
