import { readFileSync } from 'node:fs';
import { cultivars } from '@neckfall/data';
import { Ajv } from 'ajv';
import { describe, expect, test } from 'vitest';
import { neckfallQuick } from './run-neckfall.ts';

const validate = new Ajv({ strict: true, allErrors: true }).compile(
  JSON.parse(readFileSync(new URL('../schemas/which@1.json', import.meta.url), 'utf8')),
);

type Row = {
  rank: number;
  alike: number;
  cultivars: string[];
  class: string;
  start: string;
  date: string;
  keepsMonths: [number, number];
  why: string;
};

function documentOf(...args: string[]): { choices: Row[]; considered: number; ranking: string } {
  const { code, stdout } = neckfallQuick('which', ...args, '--json');
  expect(code).toBe(0);
  const document = JSON.parse(stdout);
  validate(document);
  expect(validate.errors).toBeNull();
  return document;
}

describe('which', () => {
  const lyon = documentOf('Lyon');

  test('gives twenty choices out of more, in the order of their ranks, dates within the year ahead', () => {
    expect(lyon.choices).toHaveLength(20);
    expect(lyon.considered).toBeGreaterThan(20);
    const ranks = lyon.choices.map(({ rank }) => rank);
    expect(ranks).toEqual([...ranks].sort((a, b) => a - b));
    for (const { date, why } of lyon.choices) {
      expect(date >= '2027-05-03' && date < '2028-05-03').toBe(true);
      expect(why).toMatch(/^[A-Z].*\.$/);
    }
  });

  test('shares a rank among as many as it says', () => {
    const all = documentOf('Lyon', '--limit', '1000');
    expect(all.choices).toHaveLength(all.considered);
    for (const { rank, alike } of all.choices) {
      expect(all.choices.filter((other) => other.rank === rank)).toHaveLength(alike + 1);
    }
  });

  test('answers the same alone and on two threads', () => {
    // few kinds are grown on one
    const sets = documentOf('Lyon', '--start', 'sets', '--class', 'long', '--limit', '1000').choices;
    const all = documentOf('Lyon', '--limit', '1000').choices;
    for (const { cultivars, date, class: dayLength } of sets) {
      const same = all.find((row) => row.start === 'sets' && row.cultivars.includes(cultivars[0]));
      expect({ date: same?.date, class: same?.class }).toEqual({ date, class: dayLength });
    }
  });

  test('keeps to its filters', () => {
    for (const { start } of documentOf('Lyon', '--start', 'sets').choices) expect(start).toBe('sets');
    for (const { keepsMonths } of documentOf('Lyon', '--keeps', '6').choices)
      expect(keepsMonths[0]).toBeGreaterThanOrEqual(6);
    const { choices } = documentOf('Lyon', '--have', 'copra; Walla Walla');
    expect(new Set(choices.flatMap(({ cultivars }) => cultivars))).toEqual(new Set(['Copra', 'Walla Walla']));
  });

  test('never names a shallot or a multiplier', () => {
    const names = documentOf('Lyon', '--limit', '1000').choices.flatMap(({ cultivars }) => cultivars);
    expect(names).not.toContain('Golden Gourmet');
  });

  test('as a table has a row a choice', () => {
    const { stdout } = neckfallQuick('which', 'Lyon', '--csv', '--limit', '7', '--start', 'sets');
    expect(stdout.trimEnd().split('\r\n')).toHaveLength(8);
  });

  test('for people leads with what to buy, then kinds, then names', () => {
    const { stdout, code } = neckfallQuick('which', 'Lyon', '--class', 'long', '--start', 'sets');
    expect(code).toBe(0);
    expect(stdout).toMatch(/^Lyon, France: /);
    expect(stdout.indexOf('Kinds, each')).toBeLessThan(stdout.indexOf('By name'));
    expect(stdout).toContain('Stuttgarter');
    for (const line of stdout.split('\n')) expect(line).toBe(line.trimEnd());
  });

  test('with one onion sets its ways of starting side by side', () => {
    const { stdout } = neckfallQuick('which', 'London', '--have', 'Stuttgarter');
    expect(stdout).toContain('Ways to start Stuttgarter');
    expect(stdout).toContain('Losses');
  });

  test('names what is sold in the country of the place first, in every rank', () => {
    const sold = (country: string) =>
      new Set(cultivars.filter(({ soldIn }) => soldIn.includes(country)).map(({ name }) => name));
    for (const [place, country] of [
      ['Aberdeen', 'GB'],
      ['Springfield MO', 'US'],
    ]) {
      const { choices } = documentOf(place);
      const isSold = (name: string) => sold(country).has(name);
      expect(choices[0].cultivars.some(isSold)).toBe(true);
      for (const row of choices) {
        const kinds = row.cultivars.map(isSold);
        expect(kinds).toEqual([...kinds].sort((a, b) => Number(b) - Number(a)));
      }
    }
  });

  test('says once where it knows no name that is sold in the country, but not to those who named theirs', () => {
    const said = neckfallQuick('which', 'Ulaanbaatar').stdout.replaceAll(/\s+/g, ' ');
    expect(said.split('sold here (Mongolia) is not known')).toHaveLength(2);
    expect(said).toContain('Ask for the kind');
    expect(said).not.toContain('As far as we know');
    expect(neckfallQuick('which', 'Ulaanbaatar', '--have', 'Copra').stdout).not.toContain('(Mongolia)');
  });

  test('warns of large sets that were stored cold', () => {
    const { stderr } = neckfallQuick('which', 'Winnipeg', '--start', 'sets', '--set-size', '24');
    expect(stderr).toContain('24 mm');
  });

  test('says what to grow instead where nothing does', () => {
    expect(neckfallQuick('which', 'Quito', '--have', 'Copra').stdout).toMatch(/bunching onions|gamble/);
  });
});

test.each([
  ['filters that nothing meets', ['--class', 'short', '--keeps', '12'], ['--class', '--keeps']],
  ['an unknown onion', ['--have', 'Copra, Stutgarter'], ['"Stutgarter"', 'Stuttgarter']],
  ['no name at all', ['--have', ','], ['--have']],
  ['a limit of none', ['--limit', '0'], ['--limit 0', '1 to 1,000']],
  ['months beyond any keeper', ['--keeps', '40'], ['--keeps 40', '0 to 12']],
  ['an unknown colour', ['--colour', 'gren'], ['--colour gren', 'yellow']],
])('refuses %s', (_, args, says) => {
  const { code, stdout, stderr } = neckfallQuick('which', 'Lyon', ...args);
  expect({ code, stdout }).toEqual({ code: 2, stdout: '' });
  expect(stderr.trimEnd()).not.toContain('\n');
  for (const part of says) expect(stderr).toContain(part);
});
