import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { Ajv } from 'ajv';
import { afterAll, describe, expect, test } from 'vitest';
import { neckfall, type Run } from './run-neckfall.ts';

const folder = mkdtempSync(join(tmpdir(), 'neckfall-water-'));
afterAll(() => rmSync(folder, { recursive: true }));
const schema = JSON.parse(readFileSync(new URL('../schemas/water@1.json', import.meta.url), 'utf8'));
const validate = new Ajv({ strict: true, allErrors: true }).compile(schema);

const inJune = ['--today', '2027-06-15', '--years', '6'];
const lyon = ['Lyon', '--class', 'long', '--start', 'direct-seed', '--date', '2027-03-25'];

const water = (...args: string[]): Run => neckfall('water', ...args, ...inJune);

function documentOf(...args: string[]) {
  const { code, stdout, stderr } = water(...args, '--json');
  expect({ code, stderr: code === 0 ? '' : stderr }).toEqual({ code: 0, stderr: '' });
  const document = JSON.parse(stdout);
  validate(document);
  expect(validate.errors).toBeNull();
  return document;
}

const bank = {
  id: 'bank',
  name: 'Pencarreg Bank',
  latitudeDeg: 52.08,
  longitudeDeg: -3.13,
  elevationM: 160,
  sunHours: null,
};
const bed = {
  id: 'b1',
  name: 'By the wall',
  placeId: 'bank',
  lengthM: 4,
  widthM: 1,
  watering: 'drip',
  flowLPerH: 80,
};
const terrace = {
  id: 'p1',
  name: 'Upper terrace',
  placeId: 'bank',
  bedId: 'b1',
  class: 'long',
  start: 'sets',
  startDate: '2027-03-20',
};

function gardenFile(name: string, observations: object[], beds: object[] = [bed]): string {
  const path = join(folder, `${name}.neckfall.json`);
  writeFileSync(
    path,
    JSON.stringify({ schema: 'neckfall/garden@1', places: [bank], beds, plantings: [terrace], observations }),
  );
  return path;
}

const given = (date: string, wateredLitres: number) => ({
  id: `w-${date}-${wateredLitres}`,
  plantingId: 'p1',
  date,
  wateredLitres,
});

describe('water of a plan', () => {
  test('tells today, the next days, the stop and what a season takes', () => {
    const document = documentOf(...lyon, '--bed-m2', '3', '--flow', '600', '--days');
    const { today, next, following, stop, seasonMm, days, planting, salt } = document;
    expect(planting).toBeNull();
    expect(salt).toBeNull();
    expect(document.bed).toEqual({
      areaM2: 3,
      watering: 'can',
      efficiency: 0.75,
      flowLPerH: 600,
      waterSaltDsPerM: null,
    });
    expect(today.litresPerM2).toBeCloseTo(today.depletionMm / 0.75, 0);
    expect(today.litresForBed).toBeCloseTo(3 * today.litresPerM2, 0);
    expect(today.minutes).toBeCloseTo(today.litresForBed / 10, 0);
    expect(next.p50 < following.p50 && following.p50 < stop.p50).toBe(true);
    expect(seasonMm.need.p90).toBeGreaterThan(seasonMm.need.p50);
    expect(days[0].date).toBe('2027-03-25');
  });

  test('takes what is said of the water: way, efficiency and salt', () => {
    const fresh = documentOf(...lyon);
    const drip = documentOf(...lyon, '--watering', 'drip');
    const all = documentOf(...lyon, '--efficiency', '1');
    const salty = documentOf(...lyon, '--salt', '2');
    expect(drip.bed.efficiency).toBe(0.9);
    expect(drip.seasonMm.need.p50).toBeLessThan(fresh.seasonMm.need.p50);
    expect(all.seasonMm.need.p50).toBeCloseTo(0.75 * fresh.seasonMm.need.p50, 2);
    expect(salty.salt.leachingShare).toBe(0.15);
    expect(salty.salt.yieldShare).toBeLessThan(0.8);
  });

  test('gives the days as a table that closes', () => {
    const { code, stdout } = water(...lyon, '--csv', '--days');
    expect(code).toBe(0);
    const [head, ...rows] = stdout.trimEnd().split('\r\n');
    expect(head).toBe(
      'date,rainMm,givenMm,besideMm,transpiredMm,evaporatedMm,drainedMm,depletionMm,readilyAvailableMm',
    );
    let before = 0;
    for (const row of rows) {
      const [rain, out, beside, transpired, evaporated, drained, short] = row.split(',').slice(1).map(Number);
      expect(
        Math.abs(before - short - (rain + out - beside - transpired - evaporated - drained)),
      ).toBeLessThan(0.1);
      before = short;
    }
    expect(rows.length).toBeGreaterThan(90);
  });

  test('speaks to people in their units, with cautions and grounds', () => {
    const { stdout } = water(...lyon, '--bed-m2', '3', '--salt', '0.5');
    const text = stdout.replace(/\s+/g, ' ');
    expect(text).toMatch(/^(Water today: \d+ l\/m², \d+ l for the whole bed|No need to water)/);
    expect(text).toContain('Stop when the first tops begin to fall');
    expect(text).toContain('Onions bear the salt in this water');
    expect(text).toContain('Keep to local rules on hoses');
    expect(text).toContain('No watering is noted');
    const american = water(...lyon, '--units', 'us').stdout;
    expect(american).toMatch(/[\d.]+ gal per square foot/);
    expect(american).toMatch(/[\d.]+ in\b/);
    expect(american).not.toMatch(/litre|l\/m²/);
  });

  test('speaks Spanish', () => {
    expect(water(...lyon, '--lang', 'es').stdout).toContain('Lo que lleva una temporada');
  });
});

describe('water of a planting', () => {
  test('goes by its bed and by what was noted', () => {
    const noted = gardenFile('noted', [given('2027-06-13', 60), given('2027-06-13', 60)]);
    const document = documentOf(noted, '--planting', 'p1');
    expect(document.planting).toEqual({ id: 'p1', name: 'Upper terrace' });
    expect(document.bed).toMatchObject({ areaM2: 4, watering: 'drip', efficiency: 0.9, flowLPerH: 80 });
    // 120 l on 4 m² two days before fill any bed of loam
    expect(document.today.waterNow).toBe(false);
    expect(document.today.depletionMm).toBeLessThan(12);
    const dry = documentOf(gardenFile('dry', [given('2027-04-20', 40)]), '--planting', 'p1');
    expect(dry.today.depletionMm).toBeGreaterThan(document.today.depletionMm);
  });

  test('is told otherwise by options', () => {
    const path = gardenFile('told', []);
    const document = documentOf(
      path,
      '--planting',
      'p1',
      '--bed-m2',
      '2',
      '--watering',
      'hose',
      '--flow',
      '500',
    );
    expect(document.bed).toMatchObject({ areaM2: 2, watering: 'hose', efficiency: 0.75, flowLPerH: 500 });
  });

  test('is over once it is lifted', () => {
    const path = gardenFile('lifted', [{ id: 'l', plantingId: 'p1', date: '2027-06-10', lifted: true }]);
    expect(documentOf(path, '--planting', 'p1').today).toBeNull();
    expect(water(path, '--planting', 'p1').stdout).toContain(
      'Water no more: these came out of the ground on 10 June.',
    );
  });
});

describe('refused in one line', () => {
  const cases: [string[], string[]][] = [
    [
      [...lyon, '--bed-m2', '0'],
      ['--bed-m2 0', '0.01', 'm²'],
    ],
    [
      [...lyon, '--flow', 'much'],
      ['--flow much', '1 to 100,000'],
    ],
    [
      [...lyon, '--efficiency', '75'],
      ['--efficiency 75', '0.1 to 1'],
    ],
    [
      [...lyon, '--salt', '-1'],
      ['--salt -1', '0 to 20', 'dS/m'],
    ],
    [
      [...lyon, '--watering', 'hos'],
      ['--watering hos', 'Did you mean hose?'],
    ],
    [
      [...lyon, '--csv'],
      ['--csv', '--days'],
    ],
    [['some.neckfall.json'], ['some.neckfall.json', '--planting']],
    [
      ['--planting', 'p1'],
      ['--planting p1', 'which garden'],
    ],
    [['Lyon', '--class', 'long'], ['--start is missing']],
  ];
  test.each(cases)('%s', (args, says) => {
    const { code, stdout, stderr } = water(...args);
    expect(code).toBe(2);
    expect(stdout).toBe('');
    expect(stderr.trimEnd()).not.toContain('\n');
    for (const part of says) expect(stderr).toContain(part);
  });
});
