import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { Ajv } from 'ajv';
import { afterAll, describe, expect, test } from 'vitest';
import { neckfall } from './run-neckfall.ts';

const folder = mkdtempSync(join(tmpdir(), 'neckfall-weather-files-'));
afterAll(() => rmSync(folder, { recursive: true }));

function file(name: string, content: string | Uint8Array): string {
  const path = join(folder, name);
  writeFileSync(path, content);
  return path;
}

const validate = new Ajv({ strict: true, allErrors: true }).compile(
  JSON.parse(readFileSync(new URL('../schemas/weather@1.json', import.meta.url), 'utf8')),
);

/** The one document, checked against its published schema. */
function documentOf(...args: string[]) {
  const { code, stdout, stderr } = neckfall('weather', ...args, '--json');
  expect({ code, stderr: code === 0 ? '' : stderr }).toEqual({ code: 0, stderr: '' });
  const document = JSON.parse(stdout);
  validate(document);
  expect(validate.errors).toBeNull();
  return document;
}

// a station of Pencarreg Bank's own: 13 April can be no month, so day stands first
const station = file(
  'station.csv',
  [
    'Datum;Aussen Max (°F);Aussen Min (°F);Regen (in)',
    ...['12.04.2026;59,0;41,0;0,10', '13.04.2026;50,0;32,0;0,00', '15.04.2026;68,0;50,0;1,00'],
  ].join('\r\n'),
);

describe('neckfall weather', () => {
  test('says in words what a file is, and how its columns were taken', () => {
    const { code, stdout, stderr } = neckfall('weather', station);
    expect({ code, stderr }).toEqual({ code: 0, stderr: '' });
    expect(stdout).toContain('station.csv holds 4 days of weather, from 12 April 2026 to 15 April 2026');
    expect(stdout).toMatch(/Aussen Max \(°F\) +highest temperature +°F/);
    expect(stdout).toMatch(/rain +3 +1 +28 mm in all/);
    expect(stdout).toContain('How we know');
    expect(neckfall('weather', station, '--units', 'us').stdout).toContain('1.1 in in all');
    expect(neckfall('weather', station, '--lang', 'es').stdout).toContain('contiene 4 días de tiempo');
  });

  test('gives a document, with the days where they are asked for', () => {
    const document = documentOf(station, '--days');
    expect(document).toMatchObject({
      schema: 'neckfall/weather@1',
      from: '2026-04-12',
      to: '2026-04-15',
      calendarDays: 4,
      daysWithRow: 3,
      missing: { tempMaxC: 1, tempMinC: 1, rainMm: 1 },
      means: { tempMaxC: 15, tempMinC: 5 },
      rainTotalMm: 27.94,
      extremes: { tempMaxC: 20, tempMinC: 0 },
      flagged: [],
    });
    expect(document.days[2]).toEqual({ date: '2026-04-14', tempMaxC: null, tempMinC: null, rainMm: null });
    expect(documentOf(station).days).toBeUndefined();
  });

  test('gives the days as a table, which reads back as the same', () => {
    const { stdout } = neckfall('weather', station, '--csv');
    expect(stdout.split('\r\n').slice(0, 2)).toEqual([
      'date,tempMaxC,tempMinC,rainMm',
      '2026-04-12,15,5,2.54',
    ]);
    const again = documentOf(file('again.csv', stdout), '--days');
    expect(again.days).toEqual(documentOf(station, '--days').days);
  });

  test('takes what is said of columns and dates before what it guessed', () => {
    const open = file('open.csv', 'date,a,b\n03/04/2026,59,41\n05/06/2026,50,32\n');
    const said = ['--column', 'a=tempMaxC:°F', '--column', 'b=tempMinC:°F'];
    const dmy = documentOf(open, ...said, '--dates', 'dmy');
    expect(dmy).toMatchObject({ from: '2026-04-03', to: '2026-06-05', means: { tempMaxC: 12.5 } });
    expect(documentOf(open, ...said, '--dates', 'mdy').from).toBe('2026-03-04');
  });

  test('joins files, and says where they differ', () => {
    const other = file('other.csv', 'date,temp_min_c,temp_max_c\n2026-04-13,0,17\n2026-04-14,3,12\n');
    const { overlaps, calendarDays, warnings, missing } = documentOf(station, other);
    expect({ calendarDays, missing: missing.tempMaxC }).toEqual({ calendarDays: 4, missing: 0 });
    expect(overlaps).toMatchObject([{ file: other, days: 1, differing: 1, largest: { tempMaxC: 7 } }]);
    expect(warnings.join()).toContain('other values');
  });

  test('opens packed files', () => {
    const packed = file('station.csv.gz', gzipSync(readFileSync(station)));
    expect(documentOf(packed).means).toEqual(documentOf(station).means);
  });

  test.each([
    ['no file', [], 2, 'needs <files>'],
    ['a file that is not there', [join(folder, 'none.csv')], 3, 'none.csv: there is no such file'],
    ['no weather', [file('notes.txt', 'Dear Bram,\nthe sets are in.')], 3, '"Dear Bram,"'],
    ['half a packed file', [file('half.gz', gzipSync('a,b\n'.repeat(900)).subarray(0, 30))], 3, 'damaged'],
    ['a column that is not there', [station, '--column', 'Out=tempC'], 3, '"Out"'],
    ['a quantity that is none', [station, '--column', 'Regen (in)=rainMn'], 2, 'Did you mean rainMm'],
    ['a column without a meaning', [station, '--column', 'Regen'], 2, 'NAME=WHAT'],
    ['an offset that is none', [station, '--utc-offset', '15'], 2, '--utc-offset 15'],
    ['itself to write to', [station, '--out', station], 3, 'one of the files that are read'],
  ])('refuses %s in one line', (_, args, exit, says) => {
    const { code, stdout, stderr } = neckfall('weather', ...args);
    expect({ code, stdout }).toEqual({ code: exit, stdout: '' });
    expect(stderr.trimEnd().split('\n')).toHaveLength(1);
    expect(stderr).toContain(says);
  });
});

describe('--weather', () => {
  const lyon = [
    'season',
    'Lyon',
    '--class',
    'long',
    '--start',
    'sets',
    '--years',
    '2',
    '--today',
    '2026-05-03',
  ];

  test('takes the same files, several of one record too', () => {
    const rain = file('rain.csv', 'date;rain (mm)\n2026-04-14;3,5\n');
    const args = [...lyon, '--date', '2026-04-12', '--weather', station, '--weather', rain, '--json'];
    const { code, stdout } = neckfall(...args);
    expect(code).toBe(0);
    expect(JSON.parse(stdout).assumed.join()).toContain(
      'Days from 12 April 2026 to 15 April 2026 as measured',
    );
  });

  test('refuses a typical year: no weather that came', () => {
    const hours = (year: number, month: number) =>
      Array.from({ length: 28 * 24 }, (_, at) => {
        const cells = Array.from({ length: 35 }, () => '0');
        cells.splice(
          0,
          7,
          String(year),
          String(month),
          String(Math.floor(at / 24) + 1),
          String((at % 24) + 1),
          '0',
          '?',
          '5',
        );
        return cells.join(',');
      });
    const text = [
      'LOCATION,Pencarreg Bank,-,GBR,x,1,52.08,-3.13,0,210',
      'DATA PERIODS,1,1,Data,Sunday,1/1,12/31',
    ];
    const typical = file('typical.epw', [...text, ...hours(2009, 1), ...hours(2003, 2)].join('\n'));
    expect(documentOf(typical)).toMatchObject({ from: '01-01', to: '02-28', files: [{ typicalYear: true }] });
    const { code, stderr } = neckfall(...lyon, '--date', '2026-04-12', '--weather', typical);
    expect({ code, lines: stderr.trimEnd().split('\n').length }).toEqual({ code: 3, lines: 1 });
    expect(stderr).toContain('typical year');
  });
});

const shared = process.env.NECKFALL_SHARED;
const samples = shared ? join(shared, 'data', 'weather-samples') : '';
const isThere = existsSync(join(samples, 'truth.json'));

/** What was found by hand and by other programs in files of weather services; see the README beside them. */
type Truth = {
  first_date: string;
  last_date: string;
  calendar_days_in_span: number;
  days_with_a_row: number;
  missing_tmax_days: number;
  missing_tmin_days: number;
  missing_rain_days: number;
  mean_tmax_C: number | null;
  mean_tmin_C: number | null;
  total_rain_mm: number | null;
  max_tmax_C: number | null;
  min_tmin_C: number | null;
  samples?: Record<string, (number | null)[]>;
  samples_MMDD?: Record<string, (number | null)[]>;
};
const truth: Record<string, Truth> = isThere
  ? JSON.parse(readFileSync(join(samples, 'truth.json'), 'utf8'))
  : {};
const bom = Object.keys(truth).filter((name) => name.startsWith('bom_'));
const cases = Object.keys(truth).filter((name) => name !== '_about');

describe.skipIf(!isThere)('files of weather services (needs NECKFALL_SHARED)', () => {
  test('are fifteen, and three of them joined', () => expect(cases).toHaveLength(16));

  test.each(cases)('%s gives its truth', (name) => {
    const expected = truth[name];
    const files = name === '_bom_three_files_merged' ? bom : [name];
    const found = documentOf(...files.map((file) => join(samples, file)), '--days');
    expect({
      first_date: found.from,
      last_date: found.to,
      calendar_days_in_span: found.calendarDays,
      days_with_a_row: found.daysWithRow,
      missing_tmax_days: found.missing.tempMaxC,
      missing_tmin_days: found.missing.tempMinC,
      missing_rain_days: found.missing.rainMm,
    }).toEqual({
      first_date: expected.first_date,
      last_date: expected.last_date,
      calendar_days_in_span: expected.calendar_days_in_span,
      days_with_a_row: expected.days_with_a_row,
      missing_tmax_days: expected.missing_tmax_days,
      missing_tmin_days: expected.missing_tmin_days,
      missing_rain_days: expected.missing_rain_days,
    });
    isNear(found.means.tempMaxC, expected.mean_tmax_C, 0.005);
    isNear(found.means.tempMinC, expected.mean_tmin_C, 0.005);
    isNear(found.rainTotalMm, expected.total_rain_mm, 0.05);
    isNear(found.extremes.tempMaxC, expected.max_tmax_C, 0.006);
    isNear(found.extremes.tempMinC, expected.min_tmin_C, 0.006);
    const days = new Map<string, { tempMaxC: number; tempMinC: number; rainMm: number }>(
      found.days.map((day: { date: string }) => [day.date, day]),
    );
    for (const [date, [max, min, rain]] of Object.entries(expected.samples ?? expected.samples_MMDD ?? {})) {
      isNear(days.get(date)!.tempMaxC, max, 0.006);
      isNear(days.get(date)!.tempMinC, min, 0.006);
      if (rain !== undefined) isNear(days.get(date)!.rainMm, rain, 0.006);
    }
  });
});

function isNear(found: number | null, expected: number | null, within: number): void {
  if (found === null || expected === null) expect(found).toBe(expected);
  else expect(Math.abs(found - expected)).toBeLessThanOrEqual(within);
}
