import { describe, expect, test } from 'vitest';
import { foundIn, issueIn } from './texts.ts';

/** A month of an element as the readme of GHCN-Daily lays it out (part III): value, three flags, 31 times. */
function month(
  element: string,
  stamp: string,
  values: readonly (string | number)[],
  station = 'XX000000001',
) {
  const cells = Array.from({ length: 31 }, (_, at) => {
    const value = values[at] ?? -9999;
    return typeof value === 'string' ? value : `${String(value).padStart(5)}   `;
  });
  return `${station}${stamp}${element}${cells.join('')}`;
}

describe('GHCN-Daily of fixed width', () => {
  const text = [
    month('TMAX', '202402', [101, -9999, 123]),
    // the value with a quality flag stands in the second place behind it
    month('TMIN', '202402', [12, '  -34 I ', 45]),
    month('PRCP', '202402', [0, 254, -9999]),
    month('SNWD', '202402', [0, 0, 0, 0, 0]),
  ].join('\n');

  test('is tenths, without what its quality flags say is wrong', () => {
    const { days, found, daysWithRow } = foundIn(text);
    expect(days).toEqual([
      ['2024-02-01', 10.1, 1.2, 0],
      ['2024-02-02', null, null, 25.4],
      ['2024-02-03', 12.3, 4.5, null],
    ]);
    expect(found.format).toBe('ghcn-daily-fixed');
    expect(found.flagged).toMatchObject([
      { field: 'tempMinC', value: -3.4, why: 'quality-flag', leftOut: true },
    ]);
    expect(found.unused).toEqual(['SNWD']);
    expect(daysWithRow).toBe(3);
  });

  test('takes no rain of several days for that of one', () => {
    const { days, found } = foundIn(`${text}\n${month('MDPR', '202402', [-9999, -9999, 300])}`);
    expect(days[2]).toEqual(['2024-02-03', 12.3, 4.5, null]);
    expect(found.flagged.map(({ why }) => why)).toContain('accumulated');
  });

  test('is read for its first station, and the others are told', () => {
    const other = month('TMAX', '202402', [400], 'XX000000002');
    const { found, days } = foundIn(`${text}\n${other}`);
    expect(found.otherStations).toEqual(['XX000000002']);
    expect(days[0]![1]).toBe(10.1);
  });

  test('may have lost the spaces at the ends of its lines, and ends with the month', () => {
    const trimmed = text.replace(/ +$/gm, '').replaceAll('\n', '\r\n');
    expect(foundIn(trimmed).days).toEqual(foundIn(text).days);
    // 30 February is none, whatever stands there
    const full = month(
      'TMAX',
      '202302',
      Array.from({ length: 31 }, () => 100),
    );
    expect(foundIn(full).days.at(-1)![0]).toBe('2023-02-28');
  });

  test('of other elements alone is refused', () => {
    expect(issueIn(month('SNWD', '202402', [1]))).toMatchObject({ code: 'no-values', received: 'SNWD' });
  });
});

describe('GSOD of fixed width', () => {
  // columns by GSOD_DESC.txt: MAX 103–108, its flag 109, MIN 111–116, PRCP 119–123, its flag 124
  const row = (date: string, max: string, min: string, rain: string) =>
    `066000 99999  ${date}${''.padEnd(80)}${max.padStart(7 - (max.endsWith('*') ? 0 : 1)).padEnd(7)} ${min.padStart(6)}  ${rain.padEnd(6)} 999.9  000000`;
  const head =
    'STN--- WBAN   YEARMODA    TEMP       DEWP      SLP        STP       VISIB      WDSP     MXSPD   GUST    MAX     MIN   PRCP   SNDP   FRSHTT';
  const text = [
    head,
    row('20240131', '50.0*', '32.0', ' 0.10G'),
    row('20240202', '9999.9', '14.0', ' 0.00I'),
    row('20240203', '41.0', '9999.9', '99.99'),
  ].join('\n');

  test('is Fahrenheit and inches, and keeps what comes from hours or was not reported', () => {
    const { days, found, daysWithRow } = foundIn(text);
    expect(days).toEqual([
      ['2024-01-31', 10, 0, 2.54],
      ['2024-02-01', null, null, null],
      ['2024-02-02', null, -10, 0],
      ['2024-02-03', 5, null, null],
    ]);
    expect(daysWithRow).toBe(3);
    expect(found.flagged).toMatchObject([{ field: 'rainMm', value: 0, why: 'quality-flag', leftOut: false }]);
  });

  test('is known without its head, and names the line of a day that is none', () => {
    const [, ...rows] = text.split('\n');
    expect(foundIn(rows.join('\n')).days).toHaveLength(4);
    expect(issueIn(text.replace('20240202', '20240231'))).toMatchObject({ code: 'bad-date', line: 3 });
  });

  test('leaves out a column that is not wanted', () => {
    const { days } = foundIn(text, { columns: [{ column: 'PRCP', as: null, unit: null }] });
    expect(days.map(([, , , rain]) => rain)).toEqual([null, null, null, null]);
    expect(issueIn(text, { columns: [{ column: 'MEAN', as: 'tempC', unit: null }] })).toMatchObject({
      code: 'unknown-column',
      received: 'MEAN',
      expected: 'one of MAX, MIN, PRCP',
    });
  });
});
