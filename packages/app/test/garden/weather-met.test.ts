import type { GardenWeather } from '@neckfall/engine';
import { describe, expect, test } from 'vitest';
import { keptWeather as kept, may1 } from '../../../engine/test/garden/kept-weather.ts';
import { weatherAsked } from '../../src/garden/weather-met.ts';

describe('the weather that a crop has met', () => {
  test('is that of the days up to today', () => {
    const met = weatherAsked(kept, may1 + 2);
    expect(met).toMatchObject({ lastStart: may1 + 2, record: { firstDay: may1, days: 3 } });
    expect([...(met?.record.known.tempMinC ?? [])]).toEqual([1, 1, 0]);
    expect(weatherAsked(kept, may1 - 1)).toBeNull();
  });

  test('has a key that changes with any value, and with nothing else', () => {
    const key = (of: GardenWeather, today = may1 + 9) => weatherAsked(of, today)?.key;
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
});
