import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { Ajv } from 'ajv';
import { afterAll, describe, expect, test } from 'vitest';
import { neckfallQuick } from './run-neckfall.ts';

const folder = mkdtempSync(join(tmpdir(), 'neckfall-feed-'));
afterAll(() => rmSync(folder, { recursive: true }));
const schema = JSON.parse(readFileSync(new URL('../schemas/feed@1.json', import.meta.url), 'utf8'));
const validate = new Ajv({ strict: true, allErrors: true }).compile(schema);

type Feed = { stage: string; date: string; nGPerM2: number; gramsPerM2: number; gramsForBed: number | null };

function documentOf(...args: string[]) {
  const { code, stdout, stderr } = neckfallQuick('feed', ...args, '--json');
  expect({ code, stderr: code === 0 ? '' : stderr }).toEqual({ code: 0, stderr: '' });
  const document = JSON.parse(stdout);
  validate(document);
  expect(validate.errors).toBeNull();
  return document;
}
const nitrogenOf = ({ feeds }: { feeds: Feed[] }) => feeds.reduce((sum, { nGPerM2 }) => sum + nGPerM2, 0);

const sets = ['Lyon', '--class', 'long', '--start', 'sets', '--date', '2028-03-20'];

describe('feed of a place', () => {
  const plain = documentOf(...sets);

  test('ends before the first day bulbs may begin', () => {
    expect(plain.feeds.length).toBeGreaterThan(1);
    for (const { date } of plain.feeds) expect(date < plain.stopBy).toBe(true);
    expect(plain.feeds[0]).toMatchObject({ stage: 'before-start', date: '2028-03-20', gramsForBed: null });
    expect(plain.why).toContain('first day bulbs may begin');
  });

  test('gives the nitrogen that the bed does not', () => {
    expect(nitrogenOf(plain)).toBeCloseTo(plain.nitrogenGPerM2 - plain.fromSoilGPerM2, 1);
    expect(plain.nitrogenGPerM2).toBeCloseTo((13 / 6) * plain.aimKgPerM2, 1);
    const better = documentOf(...sets, '--soil', 'poor', '--compost', '2', '--after-legume');
    expect(better.fromBed).toEqual({ soilGPerM2: 1, compostGPerM2: 2, legumeGPerM2: 3 });
    expect(nitrogenOf(better)).toBeCloseTo(nitrogenOf(plain) - 2, 1);
  });

  test('is weighed in the product at hand, for the bed it is for', () => {
    const urea = documentOf(...sets, '--product', ' 46 - 0 - 0 ', '--bed-m2', '4', '--aim', '4');
    expect(urea.aimKgPerM2).toBe(4);
    for (const { product, nGPerM2, gramsPerM2, gramsForBed } of urea.feeds) {
      expect(product).toBe('46-0-0');
      expect(gramsPerM2).toBeCloseTo(nGPerM2 / 0.46, 0);
      expect(gramsForBed).toBeCloseTo(4 * gramsPerM2, 0);
    }
    expect(urea.besides).toEqual({ phosphateGPerM2: 0, potashGPerM2: 0 });
    const meal = documentOf(...sets, '--product', 'blood meal');
    expect(meal.feeds[0].date < '2028-03-20').toBe(true);
    expect(meal.besides).toBeNull();
  });

  test('takes texture, what the soil gives, or both', () => {
    const sand = documentOf(...sets, '--soil', 'sand,poor');
    expect(sand.fertility).toBe('poor');
    expect(sand.assumed.join(' ')).toContain(' sand soil');
    expect(documentOf(...sets, '--soil', 'poor').assumed.join(' ')).toContain(' loam soil');
    expect(documentOf(...sets, '--soil', 'sand').fertility).toBe('ordinary');
  });

  test('tells of lime where pH is told', () => {
    expect(plain.lime).toBeNull();
    const sour = documentOf(...sets, '--ph', '5.2');
    expect(sour.lime).toBe('lime');
    expect(sour.advice.join(' ')).toContain('At pH 5.2');
    expect(sour.cautions.join(' ')).toContain('lime and feed with ammonium');
  });

  test('stops never where no bulbs come', () => {
    const green = documentOf(
      'Quito',
      '--class',
      'long',
      '--start',
      'sets',
      '--date',
      '10-01',
      '--soil',
      'poor',
    );
    expect(green.stopBy).toBeNull();
    expect(green.feeds.length).toBe(1);
  });

  test('is a table', () => {
    const { stdout } = neckfallQuick('feed', ...sets, '--csv');
    const [header, ...rows] = stdout.trimEnd().split('\r\n');
    expect(header).toBe('stage,date,nGPerM2,product,gramsPerM2,gramsForBed');
    expect(rows).toHaveLength(plain.feeds.length);
  });

  test('is told in words, also American ones', () => {
    const { stdout } = neckfallQuick('feed', ...sets, '--bed-m2', '4', '--units', 'us');
    const words = stdout.replace(/\s+/g, ' ');
    expect(words).toContain('oz per 100 square feet');
    expect(words).toContain('Sulfur');
    expect(words).toContain('For the bed');
    expect(words).toContain('How we know');
    expect(neckfallQuick('feed', ...sets, '--lang', 'es').stdout).toContain('Abonados');
  });

  test.each([
    [['--product', 'blodmeal'], /--product blodmeal: .*Nearest: blood-meal/],
    [['--product', '0-20-20'], /--product 0-20-20: expected the three numbers/],
    [['--product', '50-40-30'], /--product 50-40-30: /],
    [['--soil', 'rch'], /--soil rch: .*Nearest: rich/],
    [['--soil', 'poor,rich'], /--soil poor,rich: /],
    [['--aim', '40'], /--aim 40: expected a number from 0.5 to 15/],
    [['--ph', '2'], /--ph 2: /],
    [['--bed-m2', '0'], /--bed-m2 0: /],
    [['--compost', '-1'], /--compost -1: /],
  ])('refuses %s in one line', (args, line) => {
    const { code, stdout, stderr } = neckfallQuick('feed', ...sets, ...args);
    expect({ code, stdout }).toEqual({ code: 2, stdout: '' });
    expect(stderr.trimEnd()).toMatch(line);
    expect(stderr.trimEnd().split('\n')).toHaveLength(1);
  });
});

describe('feed of a planting', () => {
  const bank = {
    id: 'bank',
    name: 'Pencarreg Bank',
    latitudeDeg: 52.08,
    longitudeDeg: -3.13,
    elevationM: 160,
  };
  const bed = {
    id: 'b1',
    name: 'Upper terrace',
    placeId: 'bank',
    lengthM: 4,
    widthM: 1.25,
    soil: 'silt-loam',
    fertility: 'poor',
    compostKgPerM2: 1,
    afterLegume: true,
    soilPh: 6.4,
    feedProduct: '10-4-8',
  };
  const planting = {
    id: 'p1',
    name: 'The long row',
    placeId: 'bank',
    bedId: 'b1',
    class: 'long',
    start: 'sets',
    startDate: '2027-03-28',
  };
  const fed = { id: 'o1', plantingId: 'p1', date: '2027-03-28', fedProduct: '10-4-8', fedG: 150 };
  const garden = (name: string, observations: object[]) => {
    const path = join(folder, `${name}.neckfall.json`);
    const all = {
      schema: 'neckfall/garden@1',
      places: [bank],
      beds: [bed],
      plantings: [planting],
      observations,
    };
    writeFileSync(path, JSON.stringify(all));
    return path;
  };
  const unfed = documentOf(garden('unfed', []), '--planting', 'p1');

  test('goes by its bed', () => {
    expect(unfed).toMatchObject({
      planting: { id: 'p1', name: 'The long row' },
      bedM2: 5,
      fertility: 'poor',
      fromBed: { soilGPerM2: 1, compostGPerM2: 1, legumeGPerM2: 3 },
      lime: 'fits',
    });
    for (const { product, gramsPerM2, gramsForBed } of unfed.feeds) {
      expect(product).toBe('10-4-8');
      expect(gramsForBed).toBeCloseTo(5 * gramsPerM2, 0);
    }
  });

  test('unless an option says otherwise', () => {
    const other = documentOf(
      ...[
        garden('other', []),
        '--planting',
        'p1',
        '--product',
        '7-7-7',
        '--bed-m2',
        '2',
        '--soil',
        'ordinary',
      ],
    );
    expect(other).toMatchObject({ bedM2: 2, fertility: 'ordinary' });
    expect(other.feeds[0].product).toBe('7-7-7');
  });

  test('takes off what was noted', () => {
    const noted = documentOf(garden('fed', [fed]), '--planting', 'p1');
    // 150 g of 10 % on 5 m²
    expect(noted.givenGPerM2).toBeCloseTo(3);
    expect(nitrogenOf(unfed) - nitrogenOf(noted)).toBeCloseTo(3, 1);
  });

  test('can not say its texture twice', () => {
    const { code, stderr } = neckfallQuick(
      'feed',
      garden('twice', []),
      '--planting',
      'p1',
      '--soil',
      'sand,poor',
    );
    expect(code).toBe(2);
    expect(stderr).toContain('--soil');
  });
});
