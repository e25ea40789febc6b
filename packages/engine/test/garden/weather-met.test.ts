import { describe, expect, test } from 'vitest';
import { emptyGarden, type Garden, weatherMet, weatherNear } from '../../src/garden/index.ts';
import { keptWeather as kept, may1 } from './kept-weather.ts';

describe('the weather that came', () => {
  test('is known up to a day, and not before the first', () => {
    const met = weatherMet(kept, may1 + 2);
    expect(met).toMatchObject({ firstDay: may1, days: 3 });
    expect([...(met?.known.tempMinC ?? [])]).toEqual([1, 1, 0]);
    expect(weatherMet(kept, may1 - 1)).toBeNull();
  });

  test('has no temperatures of a day whose minimum a hand wrote above its maximum', () => {
    const met = weatherMet({ ...kept, tempMinC: [4, 25, null, 7, 8] }, may1 + 9);
    expect([...(met?.known.tempMinC ?? [])]).toEqual([1, 0, 0, 1, 1]);
    expect([...(met?.known.tempMaxC ?? [])]).toEqual([1, 0, 1, 1, 1]);
    expect([...(met?.known.rainMm ?? [])]).toEqual([1, 1, 1, 1, 1]);
  });

  test('goes on into a forecast that was made by then, and not into one of later', () => {
    const forecast = { ...kept, forecastFrom: '2027-05-03' };
    expect(weatherMet(forecast, may1)?.days).toBe(1);
    expect(weatherMet(forecast, may1 + 1)?.days).toBe(5);
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
    // an address holds four decimals
    expect(weatherNear(garden, { latitudeDeg: 52.08004, longitudeDeg: -3.13004 })).toBe(kept);
    expect(weatherNear(garden, { latitudeDeg: 52.09, longitudeDeg: -3.13 })).toBeNull();
  });
});
