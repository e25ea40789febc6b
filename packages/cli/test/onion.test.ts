import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, test } from 'vitest';
import { neckfallQuick } from './run-neckfall.ts';

const folder = mkdtempSync(join(tmpdir(), 'neckfall-onion-'));
afterAll(() => rmSync(folder, { recursive: true }));

/** Invented onions of the demo's invented growers. */
const gardenFile = join(folder, 'bank.neckfall.json');
writeFileSync(
  gardenFile,
  JSON.stringify({
    schema: 'neckfall/garden@1',
    places: [],
    cultivars: [
      { id: 'tin', name: 'Ines’s Tin', class: 'long', packetHours: 15, packetDays: 400.5 },
      { id: 'bare', name: 'Bram’s Riddle' },
    ],
  }),
);
const brokenFile = join(folder, 'broken.neckfall.json');
writeFileSync(brokenFile, '{"schema": "neckfall/garden@1", ');

const season = ['season', 'Lyon', '--start', 'sets', '--date', '03-25'];
const documentOf = (...args: string[]) => {
  const { code, stdout } = neckfallQuick(...args, '--json');
  expect(code).toBe(0);
  return JSON.parse(stdout);
};

describe('an onion by name', () => {
  test('gives its type and stands in the plan', () => {
    const { plan, assumed } = documentOf(...season, '--cultivar', 'stuttgarter');
    expect(plan).toMatchObject({ class: 'long', type: 'northern-long', cultivar: 'Stuttgarter' });
    expect(assumed.join(' ')).toContain('Stuttgarter is taken as');
  });

  test('is the same under another of its names', () => {
    const by = (name: string) => documentOf(...season, '--cultivar', name).neckFall;
    expect(by('Creamgold')).toEqual(by('Pukekohe Longkeeper'));
  });

  test('can come out of the garden file, damage told', () => {
    const { code, stdout, stderr } = neckfallQuick(
      ...season,
      ...['--cultivar', 'ines’s tin', '--garden', gardenFile, '--json'],
    );
    expect(code).toBe(0);
    expect(JSON.parse(stdout).plan.cultivar).toBe('Ines’s Tin');
    expect(stderr).toContain('cultivars[0].packetDays');
  });
});

describe('a packet', () => {
  test('gives the type by its hours, and is said in the assumptions', () => {
    const { plan, assumed } = documentOf('when', 'Lyon', '--start', 'sets', '--packet-hours', '15');
    expect(plan).toMatchObject({ class: 'long', cultivar: null });
    expect(assumed.join(' ')).toContain('15 h');
  });

  test('that ripens sooner brings tops down sooner', () => {
    const fall = (days: string) =>
      documentOf(...season, '--class', 'long', '--packet-days', days).neckFall.p50 as string;
    expect(fall('60') < fall('300')).toBe(true);
  });
});

test.each([
  ['an unknown onion', ['--cultivar', 'Stutgarter'], 2, ['"Stutgarter"', 'Did you mean Stuttgarter']],
  ['a shallot', ['--cultivar', 'Golden Gourmet'], 2, ['Golden Gourmet', 'bulb onion']],
  ['a name and a class', ['--cultivar', 'Copra', '--class', 'long'], 2, ['--class', '--cultivar Copra']],
  ['a name and hours', ['--cultivar', 'Copra', '--packet-hours', '14'], 2, ['--packet-hours']],
  ['days alone', ['--packet-days', '100'], 2, ['--class is missing']],
  ['hours beyond any onion', ['--packet-hours', '3'], 2, ['--packet-hours 3', '8 to 20']],
  ['a garden file that is not there', ['--class', 'long', '--garden', 'nowhere.json'], 3, ['nowhere.json']],
  ['a garden file cut off', ['--class', 'long', '--garden', brokenFile], 3, ['broken.neckfall.json', 'JSON']],
  ['a folder', ['--class', 'long', '--garden', folder], 3, ['EISDIR']],
  [
    'an own onion without day length',
    ['--cultivar', 'Bram’s Riddle', '--garden', gardenFile],
    2,
    ['Bram’s Riddle', 'day length'],
  ],
])('refuses %s', (_, args, exit, says) => {
  const { code, stdout, stderr } = neckfallQuick(...season, ...args);
  expect({ code, stdout }).toEqual({ code: exit, stdout: '' });
  expect(stderr.trimEnd()).not.toContain('\n');
  for (const part of says) expect(stderr).toContain(part);
});
