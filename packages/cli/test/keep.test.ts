import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { Ajv } from 'ajv';
import Papa from 'papaparse';
import { afterAll, describe, expect, test } from 'vitest';
import type { JobsDocument } from '../src/documents/jobs-schema.ts';
import type { KeepDocument } from '../src/documents/keep-schema.ts';
import { neckfall } from './run-neckfall.ts';

const folder = mkdtempSync(join(tmpdir(), 'neckfall-keep-'));
afterAll(() => rmSync(folder, { recursive: true }));
const example = new URL('../../../docs/examples/pencarreg.neckfall.json', import.meta.url);
const schema = JSON.parse(readFileSync(new URL('../schemas/keep@1.json', import.meta.url), 'utf8'));
const validate = new Ajv({ strict: true, allErrors: true }).compile(schema);

const quick = ['--today', '2027-02-01', '--years', '3'];
const keep = (...args: string[]) => neckfall('keep', ...args, ...quick);

function documentOf(...args: string[]): KeepDocument {
  const { code, stdout, stderr } = keep(...args, '--json');
  expect(code, stderr).toBe(0);
  const document = JSON.parse(stdout);
  expect(validate(document), JSON.stringify(validate.errors)).toBe(true);
  return document;
}

function gardenWith(name: string, changes: object): string {
  const path = join(folder, name);
  writeFileSync(path, JSON.stringify({ ...JSON.parse(readFileSync(example, 'utf8')), ...changes }));
  return path;
}

const kitchen = {
  people: 3,
  gramsPerWeek: 600,
  store: null,
  storeTempC: 8.5,
  storeHumidityPct: 70,
  likes: ['keeper'],
};
const plain = (text: string) => text.replace(/\s+/g, ' ');

const leeds = documentOf('Leeds', '--people', '4', '--store', 'shed', '--like', 'keeper');

describe.each([
  ['Leeds', leeds, 4],
  ['Lisbon', documentOf('Lisbon', '--people', '2', '--store', '8,5;70', '--like', 'red'), 2],
  ['Nairobi', documentOf('Nairobi', '--people', '5', '--grams-per-week', '1000'), 5],
])('a kitchen in %s', (name, document, people) => {
  test('is told of its place and people', () => {
    expect(document.place.name).toBe(name);
    expect(document.household.people).toBe(people);
    expect(document.answer).toMatch(/\.$/);
  });

  test('has lots whose beds are the bed, each with what it is started from', () => {
    expect(document.lots.length).toBeGreaterThan(0);
    expect(document.lots.reduce((sum, { bedM2 }) => sum + bedM2, 0)).toBeCloseTo(document.bedM2, 1);
    for (const { start, plants, ...need } of document.lots) {
      expect(plants).toBeGreaterThan(0);
      expect(need.seeds !== null).toBe(start === 'direct-seed' || start === 'raised-seedlings');
      expect(need.sets !== null).toBe(start === 'sets');
      expect(need.bundles !== null).toBe(start === 'bought-transplants');
    }
  });

  test('eats its need in twelve months that follow each other', () => {
    const { months, household } = document;
    expect(months).toHaveLength(12);
    const numbers = months.map(({ month }) => {
      const [year, of] = month.split('-').map(Number);
      return 12 * year + of;
    });
    expect(numbers).toEqual(numbers.map((_, at) => numbers[0] + at));
    const need = months.reduce((sum, { needKg }) => sum + needKg, 0);
    expect(need).toBeGreaterThan((household.gramsPerWeek / 1000) * 51);
    expect(need).toBeLessThan((household.gramsPerWeek / 1000) * 53.5);
    for (const { storeKg, from } of months) {
      expect(storeKg.p10).toBeLessThanOrEqual(storeKg.p90);
      for (const lot of from) expect(document.lots[lot]).toBeDefined();
    }
  });

  test('is told what to get for each lot, and when it runs short', () => {
    const bought = document.shopping.flatMap(({ lot }) => (lot === null ? [] : [lot]));
    expect([...bought].sort()).toEqual(document.lots.map((_, at) => at));
    for (const { from, to, closedBy } of document.gaps) {
      expect(from <= to).toBe(true);
      expect(closedBy.length).toBeGreaterThan(0);
    }
  });
});

test('what was said is what is reckoned with; what was not is usual', () => {
  expect(leeds.household).toMatchObject({ gramsFrom: 'usual', store: 'shed', likes: ['keeper'] });
  // colder in February than in August, as outdoors
  expect(leeds.storeClimate[1].tempC).toBeLessThan(leeds.storeClimate[7].tempC - 5);
  const said = documentOf('Leeds', '--people', '4', '--grams-per-week', '900', '--store', '8,70');
  expect(said.household).toMatchObject({ gramsPerWeek: 900, gramsFrom: 'given', store: null });
  for (const { tempC, relativeHumidityPct } of said.storeClimate)
    expect([tempC, relativeHumidityPct]).toEqual([8, 70]);
});

test('old seed takes more of it on the same bed', () => {
  const of = (age: string) => documentOf('Leeds', '--people', '4', '--seed-age', age);
  const [fresh, old] = [of('fresh'), of('two-years')];
  expect(old.bedM2).toBe(fresh.bedM2);
  const seeds = ({ lots }: KeepDocument) => lots.reduce((sum, lot) => sum + (lot.seeds ?? 0), 0);
  expect(seeds(old)).toBeGreaterThan(1.2 * seeds(fresh));
});

const leedsShed = ['Leeds', '--people', '4', '--store', 'shed', '--like', 'keeper'];

test('the text has the numbers of the document, in its order', () => {
  const { code, stdout } = keep(...leedsShed);
  expect(code).toBe(0);
  const text = plain(stdout);
  expect(text.startsWith(plain(leeds.answer))).toBe(true);
  for (const { plants } of leeds.lots) expect(text).toContain(`${plants} plants`);
  for (const { sentence } of leeds.shopping) expect(text).toContain(plain(sentence));
  for (const sentence of [...leeds.eatFirst, ...leeds.cautions]) expect(text).toContain(plain(sentence));
  const kilograms = new Intl.NumberFormat('en-GB', { maximumFractionDigits: 1 });
  for (const { needKg } of leeds.months) expect(text).toContain(`${kilograms.format(needKg)} kg`);
});

test('American measures, and Spanish', () => {
  const american = keep(...leedsShed, '--units', 'us').stdout;
  expect(american).toMatch(/square feet/);
  expect(american).toMatch(/\d lb/);
  expect(american).not.toMatch(/\d (kg|m²)/);
  const spanish = keep(...leedsShed, '--lang', 'es').stdout;
  expect(spanish).toMatch(/^Planta .* m²/);
  expect(spanish).not.toMatch(/What|Lot |store|plants/);
});

test('as a table: a row a month, with the numbers of the document', () => {
  const { data } = Papa.parse<Record<string, string>>(keep(...leedsShed, '--csv').stdout.trim(), {
    header: true,
  });
  expect(data.map(({ month }) => month)).toEqual(leeds.months.map(({ month }) => month));
  expect(data.map(({ storeKgP50 }) => Number(storeKgP50))).toEqual(
    leeds.months.map(({ storeKg }) => storeKg.p50),
  );
});

describe('of a garden', () => {
  test('place, kitchen and own onions are taken from the file, which stays as it is', () => {
    const garden = gardenWith('kitchen.neckfall.json', { kitchen });
    const before = readFileSync(garden, 'utf8');
    const { household, storeClimate, place } = documentOf(garden);
    expect(household).toEqual({
      people: 3,
      gramsPerWeek: 600,
      gramsFrom: 'given',
      store: null,
      storeReadings: 0,
      likes: ['keeper'],
      seedAge: null,
    });
    expect(storeClimate[0]).toEqual({ month: 1, tempC: 8.5, relativeHumidityPct: 70 });
    expect(place.latitudeDeg).toBeCloseTo(52.08);
    expect(readFileSync(garden, 'utf8')).toBe(before);
  });

  test('readings of its store warm or cool the year there, and are told', () => {
    const reading = (date: string, tempC: number, store = 'cellar') => ({
      date,
      store,
      tempC,
      humidityPct: null,
    });
    const read = { ...kitchen, store: 'cellar', storeTempC: null };
    const storeReadings = [
      reading('2027-01-12', 11),
      reading('2026-07-30', 14),
      reading('2026-07-30', 30, 'shed'),
    ];
    const garden = gardenWith('read.neckfall.json', { kitchen: { ...read, storeReadings } });
    const told = documentOf(garden);
    const usual = documentOf(gardenWith('unread.neckfall.json', { kitchen: read }));
    expect(told.household).toMatchObject({ store: 'cellar', storeReadings: 2 });
    expect(usual.household).toMatchObject({ store: 'cellar', storeReadings: 0 });
    const [january, before] = [told.storeClimate[0].tempC, usual.storeClimate[0].tempC];
    expect(january).toBeGreaterThan(before);
    expect(january).toBeLessThanOrEqual(11);
    expect(plain(keep(garden).stdout)).toContain('drawn toward your 2 readings');
    // named as an option it is the same store
    expect(documentOf(garden, '--store', 'cellar').storeClimate).toEqual(told.storeClimate);
    expect(documentOf(garden, '--store', 'shed').household.storeReadings).toBe(1);
  });

  test('what was lifted is in store, and told', () => {
    const { plantings, observations } = JSON.parse(readFileSync(example, 'utf8'));
    const lifted = {
      id: 'n9',
      plantingId: 'tarrant',
      date: '2026-11-20',
      lifted: true,
      weighedKg: 9,
      bulbCount: 100,
    };
    const garden = gardenWith('lifted.neckfall.json', {
      kitchen,
      plantings: [{ ...plantings[0], startDate: '2026-02-20' }],
      observations: [...observations, lifted],
    });
    const { inStore, eatFirst } = documentOf(garden);
    expect(inStore).toMatchObject([{ planting: 'tarrant', liftedOn: '2026-11-20', checks: 0 }]);
    const [{ soundKg, soundBulbs, soundShare }] = inStore;
    expect(soundKg.p50).toBeGreaterThan(0);
    expect(soundKg.p50).toBeLessThan(9);
    expect(soundBulbs.p50).toBeCloseTo(100 * (soundShare.p50 ?? 0), 0);
    expect(eatFirst[0]).toContain('Ines');
    // the work on it says the same
    const work = neckfall('jobs', garden, '--planting', 'tarrant', '--today', '2027-02-01', '--json');
    const looks = (JSON.parse(work.stdout) as JobsDocument).jobs.filter(({ id }) =>
      id.startsWith('check-store'),
    );
    expect(looks.map(({ best }) => best)).toContain(inStore[0].nextLook);
  });

  test('an option goes before the file', () => {
    const garden = gardenWith('options.neckfall.json', { kitchen });
    const { household } = documentOf(garden, '--people', '2', '--store', 'fridge', '--like', 'mild,red');
    expect(household).toMatchObject({
      people: 2,
      gramsFrom: 'usual',
      store: 'fridge',
      likes: ['mild', 'red'],
    });
  });

  test('of a planting that is named it tells whether to lift it, and how it dries', () => {
    const garden = gardenWith('lift.neckfall.json', { kitchen });
    const named = [garden, '--planting', 'okoro', '--today', '2027-08-20', '--years', '3'];
    const document: KeepDocument = JSON.parse(neckfall('keep', ...named, '--json').stdout);
    expect(validate(document), JSON.stringify(validate.errors)).toBe(true);
    expect(document.lift).toMatchObject({ planting: 'okoro', name: "Bram's sets" });
    expect(document.lift?.verdict).not.toBeNull();
    const text = plain(neckfall('keep', ...named).stdout);
    for (const sentence of document.lift?.sentences ?? ['none']) expect(text).toContain(plain(sentence));
  });

  test('of several places one is named', () => {
    const [bank] = JSON.parse(readFileSync(example, 'utf8')).places;
    const places = [
      bank,
      { ...bank, id: 'south', name: 'South plot', latitudeDeg: 38.7, longitudeDeg: -9.1 },
    ];
    const garden = gardenWith('places.neckfall.json', { kitchen, places });
    const { code, stderr } = keep(garden);
    expect(code).toBe(2);
    expect(stderr).toContain('South plot (south)');
    expect(documentOf(garden, '--place', 'south plot').place.latitudeDeg).toBeCloseTo(38.7);
    expect(keep(garden, '--place', 'sout').stderr).toContain('Nearest: south');
  });
});

test.each([
  [['Leeds'], '--people'],
  [[gardenWith('bare.neckfall.json', {})], 'kitchen'],
  [['Leeds', '--people', '0'], '--people 0'],
  [['Leeds', '--people', '101'], '1 to 100'],
  [['Leeds', '--people', 'four'], '--people four'],
  [['Leeds', '--people', '4', '--grams-per-week', '0'], '--grams-per-week 0'],
  [['Leeds', '--people', '4', '--store', 'celar'], 'Did you mean cellar'],
  [['Leeds', '--people', '4', '--store', '50,70'], '-10 to 40'],
  [['Leeds', '--people', '4', '--store', '8,101'], '0 to 100'],
  [['Leeds', '--people', '4', '--store', '8'], '8,70'],
  [['Leeds', '--people', '4', '--store', 'cold,70'], '8,70'],
  [['Leeds', '--people', '4', '--like', 'keepr'], 'Did you mean keeper'],
  [['Leeds', '--people', '4', '--like', ','], '--like'],
  [['Leeds', '--people', '4', '--planting', 'okoro'], '--planting okoro'],
  [['Leeds', '--people', '4', '--place', 'bank'], '--place bank'],
  [[gardenWith('at.neckfall.json', { kitchen }), '--at', '50,4'], '--at'],
  [[gardenWith('nowhere.neckfall.json', { kitchen, places: [] })], 'no place'],
])('%j is refused in one line', (args, named) => {
  const { code, stdout, stderr } = keep(...args);
  expect([2, 3]).toContain(code);
  expect(stdout).toBe('');
  expect(stderr.trim().split('\n')).toHaveLength(1);
  expect(stderr).toContain(named);
});
