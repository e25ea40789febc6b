import { describe, expect, test } from 'vitest';
import { noCorrections, readWeather } from '../../../src/index.ts';

const place = { utcOffsetH: null };
const file = (name: string, rows: readonly string[], header: string) => ({
  file: name,
  text: [header, ...rows].join('\n'),
  encoding: 'utf-8',
});
const both = 'date,temp_min_c,temp_max_c';

describe('files of one record', () => {
  const spring = file('spring.csv', ['2026-03-01,1,9', '2026-03-02,2,10', '2026-03-03,3,11.05'], both);
  const later = file('later.csv', ['2026-03-03,3.04,11', '2026-03-04,4,12', '2026-03-06,5,13'], both);

  test('are joined, and agree where they are rounded otherwise', () => {
    const result = readWeather([spring, later], noCorrections, place);
    if (!result.ok) throw new Error(result.file);
    const { record, overlaps, totals, daysWithRow } = result.reading;
    expect(overlaps).toEqual([]);
    expect(record.days).toBe(6);
    expect(totals.known.tempMaxC).toBe(5);
    expect(totals.missing.tempMaxC).toBe(1);
    expect(totals.meanTempMaxC).toBeCloseTo(11, 9);
    expect(daysWithRow).toBe(5);
  });

  test('have no highest or lowest of what none of them holds', () => {
    const rain = file('rain.csv', ['2026-03-02,7'], 'Date,Rain (mm)');
    const result = readWeather([rain], noCorrections, place);
    expect(result.ok && result.reading.totals).toMatchObject({
      highestC: null,
      lowestC: null,
      meanTempMaxC: null,
      rainTotalMm: 7,
    });
  });

  test('that differ are told of, and the later one stands', () => {
    const other = file('other.csv', ['2026-03-02,2,10', '2026-03-03,-1,11.05'], both);
    const result = readWeather([spring, other], noCorrections, place);
    if (!result.ok) throw new Error(result.file);
    const { overlaps, record } = result.reading;
    expect(overlaps).toMatchObject([{ file: 'other.csv', days: 2, differing: 1, largest: { tempMinC: 4 } }]);
    expect([...record.tempMinC]).toEqual([1, 2, -1]);
  });

  test('are all refused where one is', () => {
    const bad = file('bad.csv', ['2026-03-02,x,10'], both);
    const result = readWeather([spring, bad], noCorrections, place);
    expect(result).toMatchObject({ ok: false, file: 'bad.csv', issue: { line: 2, received: 'x' } });
  });

  test('may be corrected in a column that only one of them has', () => {
    const rain = file('rain.csv', ['2026-03-02,2,10,7'], `${both},rain_mm`);
    const drop = (column: string) => ({ ...noCorrections, columns: [{ column, as: null, unit: null }] });
    const result = readWeather([spring, rain], drop('rain_mm'), place);
    expect(result.ok && result.reading.totals.known.rainMm).toBe(0);
    expect(readWeather([spring, rain], drop('sun'), place)).toMatchObject({
      ok: false,
      issue: { code: 'unknown-column', received: 'sun' },
    });
  });
});

test('what is no weather is refused by what it begins with', () => {
  for (const text of [
    '',
    '\n\n',
    'Dear Ines,\nthe sets came today.',
    '{"schema":"neckfall/garden@1"}',
    '[]',
    '%PDF-1.7',
  ]) {
    const result = readWeather([{ file: 'a', text, encoding: 'utf-8' }], noCorrections, place);
    expect(result).toMatchObject({ ok: false, issue: { line: null } });
  }
});
