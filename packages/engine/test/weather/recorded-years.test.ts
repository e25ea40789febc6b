import { describe, expect, it } from 'vitest';
import { dayNumber } from '../../src/calendar/index.ts';
import { emptyRecord, recordedYears, weatherYears } from '../../src/weather/index.ts';
import { wetWinterCoast } from './climates.ts';

const years = 3;
const blockYears = 2;
const generated = weatherYears(wetWinterCoast, years + blockYears - 1, 7);

/** 400 days from 1 March 2025, whose rain is their number counted from 1. */
const record = emptyRecord(dayNumber(2025, 3, 1), 400);
record.known.rainMm.fill(1);
for (let at = 0; at < record.days; at++) record.rainMm[at] = at + 1;

describe('generated years as alternatives of the same calendar years', () => {
  const blocks = recordedYears(generated, years, blockYears, 2025, record);

  it('all meet the measured days, in both years of a block', () => {
    expect(blocks.days).toBe(years * blockYears * 365);
    for (let k = 0; k < years; k++) {
      const rain = blocks.rainMm.subarray(k * blockYears * 365);
      expect([rain[59], rain[59 + 399]]).toEqual([1, 400]);
    }
  });

  it('keep weather of their own where nothing was measured', () => {
    for (let k = 0; k < years; k++) {
      const at = k * blockYears * 365;
      const own = (day: number) => generated.rainMm[k * 365 + day];
      expect([blocks.rainMm[at + 58], blocks.rainMm[at + 59 + 400]]).toEqual([own(58), own(59 + 400)]);
      expect(blocks.tempMinC.subarray(at, at + 730)).toEqual(
        generated.tempMinC.subarray(k * 365, k * 365 + 730),
      );
    }
  });

  it('begin with the calendar year asked for', () => {
    expect(recordedYears(generated, years, blockYears, 2026, record).rainMm[0]).toBe(307);
    expect(recordedYears(generated, years, blockYears, 2030, record).rainMm.subarray(0, 730)).toEqual(
      generated.rainMm.subarray(0, 730),
    );
  });
});
