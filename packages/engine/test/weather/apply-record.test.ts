import { describe, expect, it } from 'vitest';
import { dayNumber } from '../../src/calendar/index.ts';
import { applyRecord, emptyRecord, meanYear } from '../../src/weather/index.ts';
import { wetWinterCoast } from './climates.ts';

const series = meanYear(wetWinterCoast);
const from = dayNumber(2024, 1, 1);

describe('joining a record to a series', () => {
  it('puts known values in and leaves the rest, the given series included', () => {
    const record = emptyRecord(dayNumber(2024, 3, 1), 2);
    record.tempMinC[0] = -7;
    record.tempMaxC[0] = 4;
    record.rainMm[1] = 12;
    for (const field of ['tempMinC', 'tempMaxC'] as const) record.known[field][0] = 1;
    record.known.rainMm[1] = 1;
    const before = series.tempMinC.slice();
    const joined = applyRecord(series, from, record);
    expect([joined.tempMinC[59], joined.tempMaxC[59], joined.rainMm[60]]).toEqual([-7, 4, 12]);
    expect([joined.rainMm[59], joined.tempMinC[60]]).toEqual([series.rainMm[59], series.tempMinC[60]]);
    expect(series.tempMinC).toEqual(before);
  });

  it('keeps the series’ range about a minimum or maximum known alone', () => {
    const record = emptyRecord(from, 2);
    record.tempMinC[0] = 30;
    record.known.tempMinC[0] = 1;
    record.tempMaxC[1] = -30;
    record.known.tempMaxC[1] = 1;
    const joined = applyRecord(series, from, record);
    expect(joined.tempMaxC[0]! - 30).toBeCloseTo(series.tempMaxC[0]! - series.tempMinC[0]!, 9);
    expect(-30 - joined.tempMinC[1]!).toBeCloseTo(series.tempMaxC[1]! - series.tempMinC[1]!, 9);
  });

  it('passes over 29 February and days outside the series', () => {
    const record = emptyRecord(dayNumber(2024, 2, 28), 400);
    record.known.rainMm.fill(1);
    record.rainMm.forEach((_, at) => {
      record.rainMm[at] = at + 1;
    });
    const { rainMm, days } = applyRecord(series, from, record);
    expect(days).toBe(365);
    // 28 February, then 1 March, which is the record's third day.
    expect([rainMm[57], rainMm[58], rainMm[59]]).toEqual([series.rainMm[57], 1, 3]);
    expect(rainMm[364]).toBe(dayNumber(2024, 12, 31) - dayNumber(2024, 2, 28) + 1);
  });

  it('refuses a series that does not begin on 1 January', () => {
    expect(() => applyRecord(series, from + 1, emptyRecord(from, 1))).toThrow('1 January');
  });
});
