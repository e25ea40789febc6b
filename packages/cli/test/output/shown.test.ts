import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, test } from 'vitest';
import { neckfall, neckfallQuick } from '../run-neckfall.ts';

const folder = mkdtempSync(join(tmpdir(), 'neckfall-shown-'));
afterAll(() => rmSync(folder, { recursive: true }));
function file(name: string, content: string): string {
  const path = join(folder, name);
  writeFileSync(path, content);
  return path;
}

/** Clears the screen, rings, breaks the line, turns what follows round, and takes no room. */
const hostile = 'Red\u001b[2J\u0007\n\u009b31m\u202e\u2067\u200b\u2028 one';
const seen = 'Red\\u{1b}[2J\\u{7}\\u{a}\\u{9b}31m\\u{202e}\\u{2067}\\u{200b}\\u{2028} one';
/** Anything of the kind but the line breaks of our own. */
const unseen = /(?!\n)[\p{Cc}\p{Zl}\p{Zp}\u200b-\u200f\u202a-\u202e\u2060-\u2069\ufeff]/u;

const garden = file(
  'garden\u001b[1m\u202e.json',
  JSON.stringify({
    schema: 'neckfall/garden@1',
    places: [],
    cultivars: [
      { id: 'a', name: hostile, class: 'long', packetHours: null, packetDays: null, keepsMonths: null },
      {
        id: 'b',
        name: '=cmd|" /C calc"!A0',
        class: 'short',
        packetHours: null,
        packetDays: null,
        keepsMonths: null,
      },
    ],
    plantings: [{ id: 'p', name: `${hostile}\u001b]0;title\u0007` }, 'no\u001b[5m planting'],
  }),
);
const season = ['season', 'Lyon', '--start', 'sets', '--date', '03-25'];

describe('text shows what it cannot send', () => {
  test('names of onions in a season, and what is wrong with the garden file', () => {
    const { code, stdout, stderr } = neckfallQuick(...season, '--garden', garden, '--cultivar', hostile);
    expect(code).toBe(0);
    expect(stdout.replaceAll(/\s+/g, ' ')).toContain(seen);
    expect(stdout).not.toMatch(unseen);
    expect(stderr).toContain('garden\\u{1b}[1m\\u{202e}.json');
    expect(stderr).toContain('no\\u{1b}[5m planting');
    expect(stderr).not.toMatch(unseen);
  });

  test('and in a list of onions, as text and as a table', () => {
    const text = neckfallQuick('which', 'Lyon', '--garden', garden, '--have', hostile);
    expect(text.stdout.replaceAll(/\s+/g, ' ')).toContain(seen);
    expect(text.stdout).not.toMatch(unseen);
    const table = neckfallQuick('which', 'Lyon', '--garden', garden, '--have', hostile, '--csv');
    expect(table.stdout).toContain(seen);
    expect(table.stdout.replaceAll('\r\n', '')).not.toMatch(unseen);
  });

  test.each([
    ['an unknown town', ['where', hostile]],
    ['an unknown onion', ['cultivars', hostile]],
    ['an unknown option', ['where', `--${hostile}`]],
    ['an unknown command', [hostile]],
    ['a file that is not there', ['where', 'Lyon', '--weather', join(folder, hostile)]],
    ['a folder that is not there', ['cultivars', '--out', join(folder, hostile, 'out')]],
    [
      'a column that is none',
      ['where', '--batch', file('columns.csv', `"${hostile.replace('\n', '')}"\n1\n`)],
    ],
    [
      'a cell that is no number',
      [
        'where',
        'Lyon',
        '--weather',
        file('days.csv', `date,temp_min_c,temp_max_c\n2027-01-01,"\u001b[31m",2\n`),
      ],
    ],
    ['our own fault, told in full', ['where', hostile, '--debug']],
  ])('what was typed or read: %s', (_, args) => {
    const { code, stdout, stderr } = neckfall(...args);
    expect(code).toBeGreaterThan(0);
    expect(stdout).toBe('');
    expect(stderr).toContain('\\u{1b}[');
    expect(stderr).not.toMatch(unseen);
  });
});

describe('a document is exact, in letters that a screen can show', () => {
  test('one', () => {
    const { stdout } = neckfallQuick(...season, '--garden', garden, '--cultivar', hostile, '--json');
    expect(JSON.parse(stdout).plan.cultivar).toBe(hostile);
    expect(stdout).not.toMatch(unseen);
  });

  test('a line of many', () => {
    const rows = file('rows.csv', `id,latitude,longitude\n"${hostile}",45.76,4.84\n"${hostile}",x,4\n`);
    const { stdout } = neckfallQuick('where', '--batch', rows);
    const lines = stdout.trimEnd().split('\n');
    expect(lines.map((line) => JSON.parse(line).id)).toEqual([hostile, hostile]);
    expect(stdout).not.toMatch(unseen);
  });
});

test('a name that a spreadsheet would reckon with is written as text, and read again as it was', () => {
  const out = join(folder, 'which.csv');
  const name = '=cmd|" /C calc"!A0';
  const { code } = neckfallQuick('which', 'Lyon', '--garden', garden, '--have', name, '--csv', '--out', out);
  expect(code).toBe(0);
  const written = readFileSync(out, 'utf8');
  expect(written).toContain(`"'=cmd|"" /C calc""!A0"`);
  const rows = file('formula.csv', `id,latitude,longitude\n"'=cmd|"" /C calc""!A0",45.76,4.84\n`);
  expect(JSON.parse(neckfallQuick('where', '--batch', rows).stdout).id).toBe(name);
});
