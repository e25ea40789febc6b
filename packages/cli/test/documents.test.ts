import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { Ajv } from 'ajv';
import { describe, expect, test } from 'vitest';
import { publishedSchemas } from '../schemas/published-schemas.ts';
import { neckfall, neckfallQuick, testDay } from './run-neckfall.ts';

const ajv = new Ajv({ strict: true, allErrors: true });

function readSchema(name: string) {
  return JSON.parse(readFileSync(new URL(`../schemas/${name}@1.json`, import.meta.url), 'utf8'));
}

const validators = {
  where: ajv.compile(readSchema('where')),
  season: ajv.compile(readSchema('season')),
  when: ajv.compile(readSchema('when')),
};

/** The one document of a command, checked against its published schema. */
function documentOf(...args: string[]) {
  const { code, stdout } = neckfallQuick(...args, '--json');
  expect(code).toBe(0);
  const document = JSON.parse(stdout);
  const validate = validators[args[0] as keyof typeof validators];
  validate(document);
  expect(validate.errors).toBeNull();
  return document;
}

const lyon = ['Lyon', '--class', 'long'];
/** A point at the foot of the Andes: southern, no town. */
const andes = ['--at=-33.03,-68.9', '--class', 'short'];
/** Where long-day onions stay green. */
const quito = ['Quito', '--class', 'long'];

test('the published schemas are those of the definitions', () => {
  for (const [name, schema] of Object.entries(publishedSchemas)) {
    expect(readSchema(name)).toEqual(JSON.parse(JSON.stringify(schema)));
  }
});

describe('where', () => {
  test.each([[['Lyon']], [['--at', '68.44,17.43,10']], [['Quito']], [['--at=-54.8,-68.3']]])(
    'gives a document for %s',
    (args) => {
      const document = documentOf('where', ...args);
      expect(document.schema).toBe('neckfall/where@1');
      expect(document.today.date).toBe(testDay);
      expect(document.today.starts).toHaveLength(12);
      expect(document.classes).toHaveLength(3);
      const sunUp: number[] = document.daylight.hoursByDay;
      expect(document.daylight.longestH).toBe(Math.max(...sunUp));
      // twilight is light too
      for (const [day, hours] of document.daylight.photoperiodByDay.entries()) {
        expect(hours).toBeGreaterThanOrEqual(sunUp[day]);
      }
    },
  );

  test('names the town, its country and its time zone', () => {
    expect(documentOf('where', 'lyon').place).toMatchObject({
      name: 'Lyon',
      country: 'FR',
      timeZone: 'Europe/Paris',
      near: null,
    });
  });

  test('gives polar day and night as 24 and 0 hours', () => {
    const { daylight } = documentOf('where', '--at', '68.44,17.43,10');
    expect([daylight.longestH, daylight.shortestH]).toEqual([24, 0]);
  });

  test('adds the warming to every month, and leaves it out when asked', () => {
    const warm = documentOf('where', 'Lyon', '--warmer', '2').climate;
    const plain = documentOf('where', 'Lyon', '--warmer', '0').climate;
    expect([warm.warmerC, plain.warmerC]).toEqual([2, 0]);
    for (const [at, month] of warm.months.entries()) {
      expect(month.tempMeanC).toBeCloseTo(plain.months[at].tempMeanC + 2, 1);
      expect(month.frostNights).toBeLessThanOrEqual(plain.months[at].frostNights);
    }
  });
});

describe('season', () => {
  test.each([
    [[...lyon, '--start', 'direct-seed', '--date', '03-25', '--days']],
    [
      [
        ...lyon,
        '--start',
        'raised-seedlings',
        '--date',
        '02-10',
        '--lamp-hours',
        '14',
        '--nursery-temp',
        '16',
      ],
    ],
    [[...andes, '--start', 'bought-transplants', '--date', '09-01', '--cover', 'fleece']],
    [[...quito, '--start', 'sets', '--date', '10-01', '--water', 'rain', '--set-store', 'warm']],
  ])('gives a document for %s', (args) => {
    const document = documentOf('season', ...args);
    const shares: number[] = Object.values(document.seasonShares);
    expect(shares.reduce((sum, share) => sum + share, 0)).toBeCloseTo(1, 9);
    expect(document.onset.p10 === null).toBe(document.onset.share === 0);
  });

  test('tells the weather of the years from what is not known of the kind, and when to count leaves', () => {
    const args = ['season', ...lyon, '--start', 'direct-seed', '--date', '2028-03-25', '--today', testDay];
    const document = JSON.parse(neckfall(...args, '--json').stdout);
    validators.season(document);
    expect(validators.season.errors).toBeNull();
    const { spans, neckFall, onset, leafCheckpoint } = document;
    const days = (from: string, to: string) => (Date.parse(to) - Date.parse(from)) / 86_400_000;
    expect(spans.neckFallDays.all).toBe(days(neckFall.p10, neckFall.p90));
    for (const { all, weather, kind } of [spans.neckFallDays, spans.bulbDiameterMm])
      expect(Math.hypot(weather, kind)).toBeCloseTo(all, 0);
    expect(days(leafCheckpoint.date, onset.p50)).toBe(21);
    expect(leafCheckpoint.leavesGreen.p50).toBeGreaterThan(1);
  });

  test('has no spans and no leaves to count where no bulbs come', () => {
    const document = documentOf('season', ...quito, '--start', 'sets', '--date', '10-01');
    expect(document.spans).toEqual({ neckFallDays: null, bulbDiameterMm: null });
    expect(document.leafCheckpoint).toBeNull();
  });

  test('says every option as used, and null for those without a part in it', () => {
    const { plan } = documentOf(
      'season',
      ...lyon,
      ...['--start', 'sets', '--date', '03-25', '--density', '60,5', '--soil', 'clay', '--sun', '7'],
    );
    expect(plan).toEqual({
      class: 'long',
      type: 'northern-long',
      cultivar: null,
      start: 'sets',
      date: '2028-03-25',
      plantOut: null,
      densityPerM2: 60.5,
      setSizeMm: 16,
      setStore: 'cold',
      cover: 'none',
      sunHours: 7,
      water: 'watered',
      soil: 'clay',
      nurseryTempC: null,
      lampHours: null,
    });
  });

  test('plants out on the day given', () => {
    const { plan, plantOut } = documentOf(
      ...['season', ...lyon, '--start', 'raised-seedlings', '--date', '2027-02-10', '--plant-out', '04-12'],
    );
    expect(plan.plantOut).toBe('2027-04-12');
    expect(plantOut).toMatchObject({ p10: '2027-04-12', p90: '2027-04-12', share: 1 });
  });
});

test('when gives 52 week starts, and windows within them', () => {
  const { starts, windows } = documentOf('when', ...lyon, '--start', 'sets');
  const dates = starts.map(({ date }: { date: string }) => date);
  expect(starts.map(({ dayOfYear }: { dayOfYear: number }) => dayOfYear)).toEqual(
    Array.from({ length: 52 }, (_, week) => 1 + 7 * week),
  );
  expect(dates[0]).toBe('01-01');
  for (const { from, to, best } of windows) expect(dates).toEqual(expect.arrayContaining([from, to, best]));
});

test('the same seed gives the same document, another seed another', () => {
  const season = ['season', ...lyon, '--start', 'sets', '--date', '03-25'];
  const first = documentOf(...season);
  expect(documentOf(...season)).toEqual(first);
  expect(documentOf(...season, '--seed', '2').neckFall).not.toEqual(first.neckFall);
});

describe('a table', () => {
  const rows = (...args: string[]) => {
    const { code, stdout } = neckfallQuick(...args, '--csv');
    expect(code).toBe(0);
    return stdout.trimEnd().split('\r\n');
  };

  test('of months has twelve rows', () => {
    const [header, ...months] = rows('where', 'Lyon');
    expect(header.split(',').slice(0, 2)).toEqual(['month', 'tempMeanC']);
    expect(months).toHaveLength(12);
  });

  test('of week starts has 52 rows as wide as its header', () => {
    const [header, ...weeks] = rows('when', ...lyon, '--start', 'sets');
    expect(weeks).toHaveLength(52);
    for (const week of weeks) expect(week.split(',')).toHaveLength(header.split(',').length);
  });

  test('of a season has a row a day', () => {
    const [header, ...days] = rows('season', ...lyon, '--start', 'sets', '--date', '03-25', '--days');
    expect(header.startsWith('date,sunUpH')).toBe(true);
    expect(days.length).toBeGreaterThan(60);
  });
});

test('--out writes the answer instead of printing it', () => {
  const folder = mkdtempSync(join(tmpdir(), 'neckfall-out-'));
  const out = join(folder, 'lyon.json');
  const { code, stdout } = neckfallQuick('where', 'Lyon', '--json', '--out', out);
  expect({ code, stdout }).toEqual({ code: 0, stdout: '' });
  validators.where(JSON.parse(readFileSync(out, 'utf8')));
  expect(validators.where.errors).toBeNull();
  rmSync(folder, { recursive: true });
});
