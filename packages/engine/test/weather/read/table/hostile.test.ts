import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { weatherColumns, weatherLines } from '../../../../src/limits/index.ts';
import { noCorrections } from '../../../../src/weather/read/found.ts';
import { tableReaders } from '../../../../src/weather/read/table/readers.ts';
import { readText } from './days-read.ts';

const rows = Array.from({ length: 30 }, (_, at) => at + 1);
const seeds = [
  `Date,Tmax (°C),Tmin (°C),Rain (mm)\n${rows.map((at) => `2024-01-${at < 10 ? '0' : ''}${at},${at},${-at},0.${at}`).join('\n')}`,
  `Datum;Uhrzeit;Temperatur;Regen gesamt\n${rows.map((at) => `1.2.2024;${at % 24}:00;${at},5;${at * 2},1`).join('\n')}`,
  `"STATION","DATE","TMAX","TMIN","PRCP","PRCP_ATTRIBUTES"\n${rows.map((at) => `"UK","2024-03-${at < 10 ? '0' : ''}${at}","  ${at * 10}","-${at}","  12",",,E"`).join('\n')}`,
  `latitude,longitude,elevation,utc_offset_seconds\n52,13,38,3600\n\ntime,temperature_2m (°C)\n${rows.map((at) => `2024-01-01T${at % 24 < 10 ? '0' : ''}${at % 24}:00,${at}`).join('\n')}\n\ntime,temperature_2m_max (°C)\n2024-01-01,9`,
  `-BEGIN HEADER-\nLocation: latitude 52 longitude -3\nT2M_MAX (C)\n-END HEADER-\nYEAR,DOY,T2M_MAX,T2M_MIN\n${rows.map((at) => `2024,${at},${at},-999`).join('\n')}`,
  `STATIONS_ID;MESS_DATUM; TXK; TNK;RSK;eor\n${rows.map((at) => `430;202401${at < 10 ? '0' : ''}${at};${at};1.0;-999;eor`).join('\r\n')}`,
  `UKE00105001,20240301,TMAX,105,,,E,\nUKE00105001,20240302,TMIN,-5,,,E,`,
  'Product code,Bureau of Meteorology station number,Year,Month,Day,Rainfall amount (millimetres),Period over which rainfall was measured (days),Quality\nIDCJAC0009,086338,2013,01,01,1.2,3,Y',
];
const pieces = [
  ',',
  ';',
  '\t',
  '"',
  '\n',
  '\r',
  '\0',
  '-',
  '9'.repeat(400),
  '1e9',
  '\uFFFD',
  '(',
  '[',
  '#',
  '٣',
  'NaN',
  ' '.repeat(300),
  '2024-02-30',
  '31/31/31',
  ':',
  '.',
  '°F',
  'Infinity',
  '-9999',
  '00:00Z',
  '+14:00',
];

/** Cuts, doubles, swaps and puts pieces into a text, at places drawn. */
const mutation = fc.record({
  seed: fc.constantFrom(...seeds),
  changes: fc.array(
    fc.record({
      at: fc.double({ min: 0, max: 1, noNaN: true }),
      cut: fc.nat(40),
      piece: fc.constantFrom('', ...pieces),
      times: fc.integer({ min: 1, max: 4 }),
    }),
    { maxLength: 6 },
  ),
});

describe('a hostile table', () => {
  it('is read or refused in one line, and never throws', () => {
    fc.assert(
      fc.property(mutation, ({ seed, changes }) => {
        let text = seed;
        for (const { at, cut, piece, times } of changes) {
          const from = Math.floor(at * text.length);
          text = text.slice(0, from) + piece.repeat(times) + text.slice(from + cut);
        }
        for (const reader of tableReaders.filter(({ knows }) => knows(text))) {
          const reading = reader.read({ file: 'x', text, encoding: 'utf-8' }, noCorrections, {
            utcOffsetH: null,
          });
          if (!reading.ok) {
            expect(reading.issue.expected.length).toBeGreaterThan(5);
            expect(`${reading.issue.received}${reading.issue.expected}`).not.toContain('\n');
            continue;
          }
          const { record } = reading.found;
          expect(record.days).toBeGreaterThan(0);
          expect(record.days).toBeLessThanOrEqual(501 * 366);
          for (const field of ['tempMinC', 'tempMaxC', 'rainMm', 'solarMJ'] as const) {
            expect(record[field].every(Number.isFinite)).toBe(true);
          }
        }
      }),
      { seed: 20261128, numRuns: 600 },
    );
  });

  it.each([
    [
      'a line of places and nothing else',
      'latitude,longitude,elevation,utc_offset_seconds\n\ntime,temperature_2m_max (°C)\n2024-01-01,9',
    ],
    ['ten million commas', ','.repeat(1e7)],
    ['two million quotation marks', '"'.repeat(2e6)],
    ['ten million line ends', '\n'.repeat(1e7)],
    ['five million spaces and a number', `date tmin\n${' '.repeat(5e6)}1 2`],
    ['a name of a million letters', `date,${'tmax'.repeat(250_000)}\n2024-01-01,1`],
    ['a name of brackets', `date,${'('.repeat(100_000)}tmax\n2024-01-01,1`],
    ['a cell of a million digits', `date,tmax,tmin\n2024-01-01,${'9'.repeat(1e6)},2\n2024-01-02,1,2`],
    ['a cell of a million blanks', `date,tmax,tmin\n2024-01-01,${'1 '.repeat(5e5)},2\n2024-01-02,1,2`],
    ['a preamble of a hundred thousand lines', `${'name: x\n'.repeat(1e5)}date,tmax,tmin\n2024-01-01,2,1`],
    ['quotation marks that never close', 'date,"tmax\n"2024-01-01,1,2\n'.repeat(1e5)],
  ])('of %s is seen through', (_, text) => {
    const known = tableReaders.filter(({ knows }) => knows(text));
    for (const reader of known.length === 0 ? tableReaders.slice(-1) : known) {
      const reading = reader.read({ file: 'x', text, encoding: 'utf-8' }, noCorrections, {
        utcOffsetH: null,
      });
      if (reading.ok) expect(reading.found.record.days).toBe(1);
      else expect(reading.issue.received.length).toBeLessThanOrEqual(200);
    }
  });

  it.each([
    [
      'too-many-columns',
      `date,tmin,tmax${',x'.repeat(weatherColumns)}\n2024-01-01,1,2${',1'.repeat(weatherColumns)}`,
    ],
    ['too-many-lines', `date,tmin,tmax${'\n2024-01-01,1,2'.repeat(weatherLines)}`],
    ['long-cell', `date,tmin,tmax\n2024-01-01,${'1'.repeat(201)},2`],
    ['bad-date', 'date,tmin,tmax\n2024-01-01,1,2\n2024-13-01,1,2\n2024-14-01,3,4'],
    ['bad-date', 'date,tmin,tmax\n1024-01-01,1,2\n1024-01-02,1,2'],
    ['no-dates', 'number,tmin,tmax\n1,1,2\n2,1,2'],
    ['no-values', 'date,wind,humidity\n2024-01-01,1,2\n2024-01-02,1,2'],
    ['no-values', 'date,tmin,tmax\n2024-01-01,,\n2024-01-02,,'],
    ['no-days', `date,tmin,tmax\n${rows.map((at) => `${1990 + at}-01-01,1,2`).join('\n')}`],
  ])('is refused as %s', (code, text) => {
    expect(readText(text)).toMatchObject({ ok: false, issue: { code } });
  });
});
