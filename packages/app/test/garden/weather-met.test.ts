import { emptyGarden, type Garden, type GardenWeather } from '@neckfall/engine';
import { describe, expect, test } from 'vitest';
import { weatherMet, weatherNear } from '../../src/garden/weather-met.ts';

/** 1 May 2027. */
const may1 = 20_939;
const kept: GardenWeather = {
  id: 'w',
  placeId: 'bank',
  firstDate: '2027-05-01',
  tempMinC: [4, 5, null, 7, 8],
  tempMaxC: [14, 15, 16, 17, 18],
  rainMm: [0, 0, 3, 0, 0],
  solarMJ: [null, null, null, null, null],
  forecastFrom: null,
  sources: [],
};

describe('the weather that a crop has met', () => {
  test('is that of the days up to today', () => {
    const met = weatherMet(kept, may1 + 2);
    expect(met).toMatchObject({ lastStart: may1 + 2, record: { firstDay: may1, days: 3 } });
    expect([...(met?.record.known.tempMinC ?? [])]).toEqual([1, 1, 0]);
    expect(weatherMet(kept, may1 - 1)).toBeNull();
  });

  test('goes on into a forecast that was made by then, and not into one of later', () => {
    const forecast = { ...kept, forecastFrom: '2027-05-03' };
    expect(weatherMet(forecast, may1)?.record.days).toBe(1);
    expect(weatherMet(forecast, may1 + 1)?.record.days).toBe(5);
  });

  test('has a key that changes with any value, and with nothing else', () => {
    const key = (of: GardenWeather, today = may1 + 9) => weatherMet(of, today)?.key;
    expect(key({ ...kept, id: 'other' })).toBe(key(kept));
    expect(key(kept, may1 + 30)).toBe(key(kept));
    const others: Partial<GardenWeather>[] = [
      { firstDate: '2027-05-02' },
      { tempMinC: [4, 5, 6, 7, 8] },
      { tempMaxC: [14, 15, 16, 17, 18.01] },
      { rainMm: [0, 0, null, 0, 0] },
    ];
    for (const other of others) expect(key({ ...kept, ...other })).not.toBe(key(kept));
    expect(key(kept, may1 + 1)).not.toBe(key(kept));
  });

  test('is that of the point, whatever sun its beds get', () => {
    const place = { name: 'Bank', elevationM: null, sunHours: null, frostHollow: null };
    const garden: Garden = {
      ...emptyGarden(),
      places: [
        { ...place, id: 'shade', latitudeDeg: 52.08, longitudeDeg: -3.13, sunHours: 5 },
        { ...place, id: 'bank', latitudeDeg: 52.08, longitudeDeg: -3.13 },
        { ...place, id: 'far', latitudeDeg: 52.09, longitudeDeg: -3.13 },
      ],
      weather: [kept],
    };
    expect(weatherNear(garden, { latitudeDeg: 52.08, longitudeDeg: -3.13 })).toBe(kept);
    expect(weatherNear(garden, { latitudeDeg: 52.09, longitudeDeg: -3.13 })).toBeNull();
  });
});
