import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { dayNumber, formatDay } from '../../src/calendar/index.ts';
import { dailyLines, longestCell, weatherColumns } from '../../src/limits/index.ts';
import { readDailyCsv } from '../../src/weather/index.ts';

const issuesOf = (text: string) => {
  const result = readDailyCsv(text);
  return result.ok ? [] : result.issues;
};
const header = 'date,temp_min_c,temp_max_c';

describe('reading a daily weather file', () => {
  it('takes columns and days in any order, unknown cells, gaps, CRLF and a byte order mark', () => {
    const text =
      '\uFEFFrain_mm,temp_max_c,date,temp_min_c\r\n1.5,9,2024-03-02,-2\r\n,8,2024-02-28,+.5\r\n\r\n';
    const result = readDailyCsv(text);
    if (!result.ok) throw new Error('expected a record');
    const { record } = result;
    expect([record.firstDay, record.days]).toEqual([dayNumber(2024, 2, 28), 4]);
    expect([...record.tempMinC]).toEqual([0.5, 0, 0, -2]);
    expect([...record.known.tempMinC]).toEqual([1, 0, 0, 1]);
    expect([...record.known.rainMm]).toEqual([0, 0, 0, 1]);
    expect(record.rainMm[3]).toBe(1.5);
    expect([...record.known.solarMJ]).toEqual([0, 0, 0, 0]);
  });

  it.each([
    [`${header},windspeed\n2024-01-01,1,2,3`, { code: 'unknown-column', line: 1, field: 'windspeed' }],
    ['date,temp_min_c\n2024-01-01,1', { code: 'missing-column', line: 1, field: 'temp_max_c' }],
    [`${header},date\n2024-01-01,1,2,2024-01-01`, { code: 'repeated-column', line: 1, field: 'date' }],
    [`${header}\n2024-01-01,1`, { code: 'wrong-cell-count', line: 2, field: '', received: '2 cells' }],
    [`${header}\n2023-02-29,1,2`, { code: 'bad-date', line: 2, field: 'date', received: '2023-02-29' }],
    [`${header}\n01/02/2024,1,2`, { code: 'bad-date', line: 2, field: 'date', received: '01/02/2024' }],
    [`${header}\n0024-01-02,1,2`, { code: 'out-of-range', line: 2, field: 'date', received: '0024-01-02' }],
    [`${header}\n2024-01-01,1,2\n2024-01-01,3,4`, { code: 'repeated-date', line: 3, field: 'date' }],
    [`${header}\n2024-01-01,1,NaN`, { code: 'bad-number', line: 2, field: 'temp_max_c', received: 'NaN' }],
    [`${header}\n2024-01-01,1e1,12`, { code: 'bad-number', line: 2, field: 'temp_min_c', received: '1e1' }],
    [`${header}\n2024-01-01,50,77`, { code: 'out-of-range', line: 2, field: 'temp_max_c', received: '77' }],
    [
      `${header},rain_mm\n2024-01-01,1,2,-1`,
      { code: 'out-of-range', line: 2, field: 'rain_mm', received: '-1' },
    ],
    [`${header}\n2024-01-01,5,2`, { code: 'min-above-max', line: 2, field: 'temp_min_c', received: '5' }],
    [header, { code: 'no-rows' }],
    ['', { code: 'unknown-column', line: 1 }],
  ])('refuses %j', (text, issue) => {
    expect(issuesOf(text)[0]).toMatchObject(issue);
  });

  it('returns every issue, each saying what was expected', () => {
    const issues = issuesOf(`${header}\n2024-01-01,x,2\n2024-13-01,1,2\n2024-01-03,3,1`);
    expect(issues.map(({ code, line }) => `${code} ${line}`)).toEqual([
      'bad-number 2',
      'bad-date 3',
      'min-above-max 4',
    ]);
    expect(issues.every(({ expected }) => expected.length > 5)).toBe(true);
  });

  it.each([
    [
      'a header of ten million columns',
      ','.repeat(1e7),
      { code: 'too-many-columns', line: 1 },
      `${weatherColumns}`,
    ],
    [
      'a day of a million cells',
      `${header}\n2024-01-01${',1'.repeat(1e6)}`,
      { code: 'wrong-cell-count', line: 2, received: `more than ${weatherColumns} cells` },
      '3 cells',
    ],
    [
      'a number of 80,000 digits',
      `${header}\n2024-01-01,${'9'.repeat(80_000)}x,2`,
      { code: 'long-cell', line: 2, field: 'temp_min_c', received: '9'.repeat(longestCell) },
      `${longestCell}`,
    ],
    [
      'more lines than a record may have days',
      `${header}${'\n2024-01-01,x,x'.repeat(dailyLines)}`,
      { code: 'too-many-lines', line: dailyLines + 1 },
      `${dailyLines}`,
    ],
  ])('gives up %s with one issue that says the limit', (_, text, issue, limit) => {
    const issues = issuesOf(text);
    expect(issues).toHaveLength(1);
    expect(issues[0]).toMatchObject(issue);
    expect(issues[0]!.expected).toContain(limit);
  });

  it('gives back what was written', () => {
    const day = fc.record({
      low: fc.integer({ min: -400, max: 100 }),
      range: fc.integer({ min: 0, max: 300 }),
      rain: fc.option(fc.integer({ min: 0, max: 900 })),
    });
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 20000 }),
        fc.array(day, { minLength: 1, maxLength: 40 }),
        (first, days) => {
          const lines = days.map(
            ({ low, range, rain }, at) =>
              `${formatDay(first + at)},${low / 10},${(low + range) / 10},${rain === null ? '' : rain / 10}`,
          );
          const result = readDailyCsv([`${header},rain_mm`, ...lines].join('\n'));
          if (!result.ok) throw new Error(JSON.stringify(result.issues));
          expect(result.record.firstDay).toBe(first);
          days.forEach(({ low, rain }, at) => {
            expect(result.record.tempMinC[at]).toBe(low / 10);
            expect(result.record.known.rainMm[at]).toBe(rain === null ? 0 : 1);
          });
        },
      ),
      { seed: 20260302, numRuns: 100 },
    );
  });
});
