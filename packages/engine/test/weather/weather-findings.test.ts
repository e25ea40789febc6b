import { describe, expect, test } from 'vitest';
import { civilDate, type DayNumber, dayNumber, dayOfYear } from '../../src/calendar/index.ts';
import { clearSkyRadiation, extraterrestrialRadiation, solarRadiation } from '../../src/sky/index.ts';
import { checkWeather, type DailyRecord, emptyRecord, measuredDays } from '../../src/weather/index.ts';
import { weatherYears } from '../../src/weather/weather-years.ts';
import { coldInland } from './climates.ts';

const lyonDeg = 45.76;
const first = dayNumber(2025, 1, 1);

type Day = { min?: number; max?: number; rain?: number; sun?: number };

/** A record of some days, each as it is made; what is left out is unknown. */
function recordOf(days: number, make: (day: DayNumber, at: number) => Day, firstDay = first): DailyRecord {
  const record = emptyRecord(firstDay, days);
  for (let at = 0; at < days; at++) {
    const { min, max, rain, sun } = make(firstDay + at, at);
    for (const [field, value] of Object.entries({
      tempMinC: min,
      tempMaxC: max,
      rainMm: rain,
      solarMJ: sun,
    })) {
      if (value === undefined) continue;
      const key = field as 'tempMinC' | 'tempMaxC' | 'rainMm' | 'solarMJ';
      record[key][at] = value;
      record.known[key][at] = 1;
    }
  }
  return record;
}

/** Warmest in mid-July for 1, in mid-January for −1. */
const seasons = (day: DayNumber, sign = 1): Day => {
  const swing = -Math.cos((2 * Math.PI * (dayOfYear(day) - 15)) / 365);
  const wiggle = day % 7;
  return { min: 6 + sign * 9 * swing + wiggle, max: 16 + sign * 10 * swing + wiggle };
};
const above = (day: DayNumber, latitudeDeg = lyonDeg) =>
  extraterrestrialRadiation(latitudeDeg, dayOfYear(day));

describe('a record that can be believed', () => {
  test('is found in order: generated years of a cold place inland', () => {
    const { tempMinC, tempMaxC, rainMm, solarMJ } = weatherYears(coldInland, 3, 7);
    const record = recordOf(3 * 365, (_, at) => ({
      min: tempMinC[at]!,
      max: tempMaxC[at]!,
      rain: rainMm[at]!,
      sun: solarMJ[at]!,
    }));
    expect(checkWeather(record, coldInland.latitudeDeg)).toEqual({ impossible: null, findings: [] });
  });

  test('may be short, and of one season alone', () => {
    const summer = recordOf(60, (day) => seasons(day), dayNumber(2025, 6, 1));
    expect(checkWeather(summer, -45)).toEqual({ impossible: null, findings: [] });
    expect(
      checkWeather(
        recordOf(1, () => ({ min: 0, max: 0 })),
        lyonDeg,
      ).impossible,
    ).toBeNull();
    expect(checkWeather(emptyRecord(first, 400), lyonDeg)).toEqual({ impossible: null, findings: [] });
  });
});

describe('what cannot be weather of the place', () => {
  test('is one and the same day and night for ever', () => {
    expect(
      checkWeather(
        recordOf(365, () => ({ min: 0, max: 0 })),
        lyonDeg,
      ).impossible,
    ).toBe('constant');
    expect(
      checkWeather(
        recordOf(12, () => ({ min: 7, max: 12 })),
        lyonDeg,
      ).impossible,
    ).toBe('constant');
    expect(
      checkWeather(
        recordOf(12, (_, at) => ({ min: 7, max: 12 + at })),
        lyonDeg,
      ).impossible,
    ).toBeNull();
  });

  test.each([
    [lyonDeg, 1, null],
    [lyonDeg, -1, 'other-hemisphere'],
    [-33, 1, 'other-hemisphere'],
    [-33, -1, null],
    // near the equator the rains may turn the year about
    [9, -1, null],
  ])('is summer in midwinter: at %s°, warm in July %s', (latitudeDeg, sign, impossible) => {
    const record = recordOf(365, (day) => seasons(day, sign));
    expect(checkWeather(record, latitudeDeg).impossible).toBe(impossible);
  });
});

describe('what is doubtful', () => {
  const codesOf = (record: DailyRecord) => checkWeather(record, lyonDeg).findings;

  test('sun in kilowatt hours, even of a desert', () => {
    // FAO-56 equation 37: under a clear sky at sea level, 0.75 of what is above the air
    const clear = (day: DayNumber) => clearSkyRadiation(above(day), 0);
    const inKwh = recordOf(90, (day) => ({ ...seasons(day), sun: clear(day) / 3.601 }));
    expect(codesOf(inKwh)).toEqual([{ code: 'sun-weak', share: expect.closeTo(0.208, 3) }]);
    // equation 35: the dullest sky
    const dull = recordOf(90, (day) => ({ ...seasons(day), sun: solarRadiation(above(day), 0) }));
    expect(codesOf(dull)).toEqual([]);
    expect(codesOf(recordOf(30, (day) => ({ ...seasons(day), sun: clear(day) / 4 })))).toEqual([]);
  });

  test('more sun than reaches the earth', () => {
    const record = recordOf(90, (day, at) => ({
      ...seasons(day),
      sun: above(day) * (at % 3 === 0 ? 1.2 : 0.5),
    }));
    expect(codesOf(record)).toEqual([{ code: 'sun-beyond-sky', days: 30 }]);
  });

  test('rain of half a metre a day', () => {
    const record = recordOf(90, (day, at) => ({ ...seasons(day), rain: at < 4 ? 500 - at : 300 }));
    expect(codesOf(record)).toEqual([{ code: 'rain-heavy', days: 4, mostMm: 500 }]);
  });

  test('a thermometer that stands still, the longest time of several', () => {
    const from = dayNumber(2025, 4, 10);
    const record = recordOf(365, (day) =>
      civilDate(day).month === 1 && day < first + 10
        ? { min: 1, max: 5 }
        : day >= from && day < from + 20
          ? { min: 3, max: 9 }
          : seasons(day),
    );
    expect(codesOf(record)).toEqual([{ code: 'stuck', days: 20, firstDay: from }]);
    // a gap is no standing still
    const gaps = recordOf(365, (day, at) =>
      at < 40 ? (at % 8 === 0 ? {} : { min: 2, max: 4 }) : seasons(day),
    );
    expect(codesOf(gaps)).toEqual([]);
  });
});

test('days are measured where both minimum and maximum are known', () => {
  const record = recordOf(100, (day, at) => (at % 4 === 0 ? { min: 1 } : at % 4 === 1 ? {} : seasons(day)));
  expect(measuredDays(record, first, first + 99)).toBe(50);
  expect(measuredDays(record, first - 500, first + 3)).toBe(2);
  expect(measuredDays(record, first + 100, first + 900)).toBe(0);
});
