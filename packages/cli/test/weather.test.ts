import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { dayNumber, formatDay } from '@neckfall/engine';
import { afterAll, describe, expect, test } from 'vitest';
import { neckfallQuick } from './run-neckfall.ts';

const folder = mkdtempSync(join(tmpdir(), 'neckfall-weather-'));
afterAll(() => rmSync(folder, { recursive: true }));

const header = 'date,temp_min_c,temp_max_c';

function file(name: string, content: string | Buffer): string {
  const path = join(folder, name);
  writeFileSync(path, content);
  return path;
}

/** A file of days that differ by a tenth of a degree; 12 °C day and night unless told otherwise. */
function steady(name: string, from: number, to: number, minC = 12, maxC = 12): string {
  return days(name, from, to, (day) => `${minC - (day % 2) / 10},${maxC}`);
}

function days(name: string, from: number, to: number, row: (day: number) => string, head = header): string {
  const rows: string[] = [];
  for (let day = from; day <= to; day++) rows.push(`${formatDay(day)},${row(day)}`);
  return file(name, [head, ...rows].join('\n'));
}

const lyon = ['Lyon', '--class', 'long', '--start', 'direct-seed'];
const mild2016 = steady('mild-2016.csv', dayNumber(2016, 1, 1), dayNumber(2016, 12, 31));

describe('a daily record', () => {
  test('takes the place of made-up days: every year tried comes up on one day', () => {
    const args = ['season', ...lyon, '--date', '2016-03-25', '--weather', mild2016, '--json'];
    const { code, stdout, stderr } = neckfallQuick(...args);
    expect({ code, stderr }).toEqual({ code: 0, stderr: '' });
    const { emergence, plan, assumed } = JSON.parse(stdout);
    expect(plan.date).toBe('2016-03-25');
    expect(emergence.share).toBe(1);
    expect(emergence.p10).toBe(emergence.p90);
    expect(assumed.join(' ')).toContain('Days from 1 January 2016 to 31 December 2016 as measured');
  });

  test('counts in where and when too', () => {
    // two years of −12 °C to −4 °C, from which no onion comes up
    const frozen = steady('frozen.csv', dayNumber(2027, 1, 1), dayNumber(2029, 12, 31), -12, -4);
    const when = JSON.parse(neckfallQuick('when', ...lyon, '--weather', frozen, '--json').stdout);
    expect(when.windows).toEqual([]);
    expect(JSON.parse(neckfallQuick('when', ...lyon, '--json').stdout).windows).not.toEqual([]);
    const where = JSON.parse(neckfallQuick('where', 'Lyon', '--weather', frozen, '--json').stdout);
    expect(where.classes.map(({ verdict }: { verdict: string }) => verdict)).not.toContain('good');
  });

  test('may be UTF-16, as spreadsheets write it', () => {
    const text = `\uFEFF${header}\r\n2027-03-25,4,11\r\n`;
    const path = file('utf-16.csv', Buffer.from(text, 'utf16le'));
    expect(neckfallQuick('season', ...lyon, '--date', '03-25', '--weather', path).code).toBe(0);
  });

  test('without a day of the seasons tried is warned of', () => {
    const args = ['season', ...lyon, '--date', '2027-03-25'];
    const { stderr, stdout } = neckfallQuick(...args, '--weather', mild2016);
    expect(stderr).toContain(`--weather ${mild2016} has no day of the seasons tried`);
    expect(stdout.split('How we know')[0]).toBe(neckfallQuick(...args).stdout.split('How we know')[0]);
  });

  test('opens the years it covers, and no others', () => {
    const { code, stderr } = neckfallQuick(
      'season',
      ...lyon,
      ...['--date', '2015-03-25', '--weather', mild2016],
    );
    expect(code).toBe(2);
    expect(stderr).toContain('--date 2015-03-25');
    expect(stderr).toContain('in a year that --weather covers');
  });

  test('lets plants that are raised in its last year go out in the next', () => {
    const raised = ['Lyon', '--class', 'long', '--start', 'raised-seedlings'];
    const days = ['--date', '2016-12-20', '--plant-out', '2017-03-01'];
    expect(neckfallQuick('season', ...raised, ...days, '--weather', mild2016).code).toBe(0);
  });
});

/** Whole degrees through a year, warmest in July for 1, in January for −1. */
const temperatures = (day: number, sign = 1): [number, number] => {
  const swing = Math.round(sign * -10 * Math.cos((2 * Math.PI * (day - dayNumber(2016, 1, 15))) / 365.25));
  return [5 + swing + (day % 3), 15 + swing + (day % 3)];
};

describe('a record that can hardly be', () => {
  const from = dayNumber(2016, 1, 1);
  const to = dayNumber(2016, 12, 31);
  const told = (path: string) => {
    const args = ['season', ...lyon, '--date', '2016-03-25', '--weather', path, '--json'];
    const { code, stdout, stderr } = neckfallQuick(...args);
    expect(code).toBe(0);
    const { warnings, assumed, ...answer } = JSON.parse(stdout);
    for (const warning of warnings) expect(stderr).toContain(warning);
    return { warnings: warnings as string[], assumed: assumed.join(' ') as string, answer };
  };
  const sound = days('sound.csv', from, to, (day) => temperatures(day).join(','));

  test('leaves out codes for what was not measured, and says so', () => {
    const coded = days('coded.csv', from, to, (day) =>
      day % 3 === 0 ? '-9.99,-9.99' : `${temperatures(day).join(',')}`,
    );
    const { warnings, assumed, answer } = told(coded);
    expect(warnings.join(' ')).toContain('-9.99 stands for “not measured” in 122 rows');
    expect(assumed).toMatch(/of the \d+ days from 25 March 2016 to \d+ \w+ 2016 are measured/);
    // as if the cells were empty
    const empty = days('gaps.csv', from, to, (day) => (day % 3 === 0 ? ',' : temperatures(day).join(',')));
    expect(answer).toEqual(told(empty).answer);
    const far = days('far.csv', from, to, (day) =>
      day % 5 === 0 ? '-9999,9999' : temperatures(day).join(','),
    );
    expect(told(far).warnings.filter((warning) => warning.includes('“not measured”'))).toHaveLength(2);
  });

  test('says how much of the season is measured', () => {
    expect(told(sound).warnings).toEqual([]);
    const isSummer = (day: number) => day >= dayNumber(2016, 6, 1) && day < dayNumber(2016, 9, 1);
    const { warnings } = told(
      days('no-summer.csv', from, to, (day) => (isSummer(day) ? ',' : temperatures(day).join(','))),
    );
    expect(warnings).toHaveLength(1);
    expect(warnings[0]).toMatch(/only \d+ of the \d+ days from 25 March 2016/);
  });

  test.each([
    ['solar_mj_m2', () => '4', /MJ/],
    ['solar_mj_m2', (day: number) => (day % 2 ? '49' : '9'), /more sun than reaches the earth/],
    ['rain_mm', (day: number) => (day % 2 ? '500' : '0'), /500/],
  ])('uses doubtful %s and says what is doubtful', (column, cell, says) => {
    const path = days(
      'doubtful.csv',
      from,
      to,
      (day) => `${temperatures(day).join(',')},${cell(day)}`,
      `${header},${column}`,
    );
    const { warnings } = told(path);
    expect(warnings).toHaveLength(1);
    expect(warnings[0]).toMatch(says);
  });

  test.each([
    [
      'the other half of the earth',
      days('south.csv', from, to, (day) => temperatures(day, -1).join(',')),
      /midwinter/,
    ],
    ['no place on earth', days('zero.csv', from, to, () => '0,0'), /every day/],
  ])('of %s is refused', (_, path, says) => {
    const { code, stdout, stderr } = neckfallQuick(
      'season',
      ...lyon,
      '--date',
      '2016-03-25',
      '--weather',
      path,
    );
    expect({ code, stdout }).toEqual({ code: 3, stdout: '' });
    expect(stderr.trimEnd().split('\n')).toHaveLength(1);
    expect(stderr).toContain(`--weather ${path}`);
    expect(stderr).toMatch(says);
  });
});

describe('a file that is refused, with exit code 3 and one line naming', () => {
  const ok = '2027-03-01,1,9';
  test.each([
    ['a missing file', join(folder, 'none.csv'), ['no such file', 'temp_min_c']],
    ['a folder', folder, ['EISDIR']],
    ['an empty file', file('empty.csv', ''), ['""', 'expected a table']],
    ['a file without days', file('no-rows.csv', header), ['line 1', 'at least one day']],
    [
      'other columns',
      file('columns.csv', `${header},wind\n`),
      ['line 1, wind: "wind"', 'expected one of date'],
    ],
    ['a day that is none', file('day.csv', `${header}\n2027-02-30,1,9`), ['line 2, date: "2027-02-30"']],
    [
      'a number that is none, and the others like it',
      file('number.csv', `${header}\n${ok}\n2027-03-02,x,9\n2027-03-03,1,"9"\n2027-03-04,1`),
      ['line 3, temp_min_c: "x", expected a number', '2 more issues'],
    ],
    [
      'a value beyond belief',
      file('range.csv', `${header}\n2027-03-01,1,99`),
      ['temp_max_c: "99"', '-95 to 60'],
    ],
    ['a day short of a cell', file('cells.csv', `${header}\n${ok},,`), ['line 2: "5 cells"', '3 cells']],
    ['bytes that are no text', file('bytes.csv', Buffer.from([0x64, 0, 0xe9])), ['is no text']],
  ])('%s', (_name, path, says) => {
    const out = join(folder, 'answer.txt');
    const { code, stdout, stderr } = neckfallQuick('where', 'Lyon', '--weather', path, '--out', out);
    expect({ code, stdout }).toEqual({ code: 3, stdout: '' });
    expect(stderr.trimEnd().split('\n')).toHaveLength(1);
    for (const part of [`--weather ${path}`, ...says]) expect(stderr).toContain(part);
  });
});
