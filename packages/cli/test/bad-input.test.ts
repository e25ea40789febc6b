import { describe, expect, test } from 'vitest';
import { neckfall, neckfallQuick } from './run-neckfall.ts';

/** The refusal of a command line: one line, nothing on stdout, no stack trace. */
function refusal(...args: string[]): { code: number | null; line: string } {
  const { code, stdout, stderr } = neckfallQuick(...args);
  expect(stdout).toBe('');
  expect(stderr.endsWith('\n')).toBe(true);
  expect(stderr.trimEnd()).not.toContain('\n');
  expect(stderr).not.toMatch(/ at .*:\d+:\d+/);
  return { code, line: stderr.trimEnd() };
}

const season = ['season', 'Lyon', '--start', 'sets', '--class', 'long', '--date', '03-25'];
const raised = ['season', 'Lyon', '--start', 'raised-seedlings', '--class', 'long', '--date', '2027-02-01'];

type Case = [name: string, args: string[], says: (string | RegExp)[]];

const places: Case[] = [
  ['no town', ['where'], ['Which place?', '--at']],
  ['an empty town', ['where', ' '], ['Which place?']],
  ['an unknown town', ['where', 'Xqzwvbn'], ['"Xqzwvbn"', '--at LAT,LON']],
  ['a misspelt town', ['where', 'Edinburhg'], ['"Edinburhg"', 'Nearest: ', 'Edinburgh, United Kingdom']],
  ['a town in another country', ['where', 'Lyon, Peru'], ['"Lyon"', '"Peru"', 'Lyon, France']],
  ['an unknown country', ['where', 'Lyon, Atlantis'], ['"Atlantis"', 'Lyon, France']],
  ['a town and a point', ['where', 'Lyon', '--at', '45,5'], ['"Lyon"', '45,5', 'leave one out']],
  ['latitude out of range', ['where', '--at', '91,4'], ['91', '−90 to 90']],
  ['longitude out of range', ['where', '--at', '45,-181'], ['-181', '−180 to 180']],
  ['a point of another form', ['where', '--at', '45,76,4,84'], ['45,76,4,84', '"45,76;4,84"']],
  ['a point at sea', ['where', '--at', '45,-30'], ['45,-30', 'at sea', 'nearest town']],
  ['a point too far south', ['where', '--at=-75,0'], ['-75,0', '60° S to 72° N']],
  ['a point too far north', ['where', '--at', '80,20'], ['80,20', '60° S to 72° N']],
  ['a point far from any record', ['where', '--at=25,-5'], ['Taoudenni, Mali', '150 km is the limit']],
];

const dates: Case[] = [
  ['30 February', [...season.slice(0, -1), '02-30'], ['--date 02-30', 'no such day']],
  [
    'a date too far ahead',
    [...season.slice(0, -1), '2032-05-04'],
    ['2032-05-04', '2025-05-03 to 2032-05-03'],
  ],
  ['a date too far back', [...season.slice(0, -1), '2025-05-02'], ['2025-05-02', '2025-05-03 to 2032-05-03']],
  ['a date in words', [...season.slice(0, -1), 'March'], ['--date March', 'MM-DD or YYYY-MM-DD']],
  ['no date', season.slice(0, -2), ['--date is missing']],
  ['planting out before sowing', [...raised, '--plant-out', '2027-01-31'], ['2027-01-31', '2027-02-01']],
  ['planting out much later', [...raised, '--plant-out', '2027-12-01'], ['2027-12-01', '2027-10-29']],
];

const values: Case[] = [
  ...['0', '-40', '1e9', 'many'].map(
    (value): Case => [
      `density ${value}`,
      [...season, '--density', value],
      [`--density ${value}`, '5 to 400'],
    ],
  ),
  [
    'a misspelt class',
    ['when', 'Lyon', '--start', 'sets', '--class', 'logn'],
    ['--class logn', 'Did you mean long?'],
  ],
  [
    'an unknown class',
    ['when', 'Lyon', '--start', 'sets', '--class', 'x'],
    ['--class x', 'short, intermediate or long'],
  ],
  [
    'an unknown start',
    ['when', 'Lyon', '--class', 'long', '--start', 'seed'],
    ['--start seed', 'direct-seed'],
  ],
  ['no class', ['when', 'Lyon', '--start', 'sets'], ['--class is missing', 'short, intermediate or long']],
  ['no start', ['when', 'Lyon', '--class', 'long'], ['--start is missing', 'bought-transplants']],
  ['an unknown cover', [...season, '--cover', 'flece'], ['--cover flece', 'Did you mean fleece?']],
  ['an unknown soil', [...season, '--soil', 'laom'], ['--soil laom', 'Did you mean loam']],
  ['units of another kind', ['where', 'Lyon', '--units', 'imperial'], ['--units imperial', 'metric or us']],
  ['sun beyond the day', ['where', 'Lyon', '--sun', '25'], ['--sun 25', '0 to 24']],
  ['warming beyond belief', ['where', 'Lyon', '--warmer', '40'], ['--warmer 40', '-5 to 10']],
];

const contradictions: Case[] = [
  ['planting out sets', [...season, '--plant-out', '2027-05-01'], ['--plant-out', '--start sets']],
  ['lamps over sets', [...season, '--lamp-hours', '16'], ['--lamp-hours', '--start sets']],
  ['a nursery for sets', [...season, '--nursery-temp', '15'], ['--nursery-temp', '--start sets']],
  ['a set size for seedlings', [...raised, '--set-size', '16'], ['--set-size', '--start raised-seedlings']],
  [
    'a set store for seedlings',
    [...raised, '--set-store', 'cold'],
    ['--set-store', '--start raised-seedlings'],
  ],
  ['one document and one table', ['where', 'Lyon', '--json', '--csv'], ['--json', '--csv']],
  ['a table of a season without its days', [...season, '--csv'], ['--csv', '--days']],
];

const usage: Case[] = [
  ['an unknown command', ['wher', 'Lyon'], ['"wher"', 'Did you mean where']],
  ['a misspelt option', ['where', 'Lyon', '--wamer', '1'], ['--wamer', 'Did you mean --warmer?']],
  ['an option that needs a value', ['where', 'Lyon', '--seed'], ['--seed']],
  ['a name without quotes', ['where', 'New', 'York'], ['"York"', '"New York"']],
  ['a date where weeks are tried', ['when', 'Lyon', '--date', '03-25'], ['--date']],
];

describe.each([
  ['a place', places],
  ['a date', dates],
  ['a value', values],
  ['options that contradict each other', contradictions],
  ['usage', usage],
])('%s is refused in one line with exit code 2:', (_, cases) => {
  test.each(cases)('%s', (_name, args, says) => {
    const { code, line } = refusal(...args);
    for (const part of says) {
      if (typeof part === 'string') expect(line).toContain(part);
      else expect(line).toMatch(part);
    }
    expect(code).toBe(2);
  });
});

test.each(['0', '-1', '1e9', 'NaN', '2.5'])('years %s are refused', (years) => {
  const { code, stdout, stderr } = neckfall('where', 'Lyon', '--years', years);
  expect({ code, stdout }).toEqual({ code: 2, stdout: '' });
  expect(stderr).toContain(`--years ${years}: expected a whole number from 1 to 200`);
});

test('no command at all is refused with an example that works', () => {
  const { code, stderr } = neckfall();
  expect(code).toBe(2);
  expect(stderr).toContain('neckfall where Lyon');
});

test('line breaks in a value do not break the line', () => {
  expect(refusal('where', 'No\nsuch\u001b[31m town').line).toContain('"No\\u{a}such\\u{1b}[31m town"');
});
