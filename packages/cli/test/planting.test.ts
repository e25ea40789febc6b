import { mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { Ajv } from 'ajv';
import { describe, expect, test } from 'vitest';
import { neckfall } from './run-neckfall.ts';

const folder = mkdtempSync(join(tmpdir(), 'neckfall-planting-'));
const schema = JSON.parse(readFileSync(new URL('../schemas/season@1.json', import.meta.url), 'utf8'));
const validate = new Ajv({ strict: true, allErrors: true }).compile(schema);

/** A stand-in for a station where spring was warm: no two days of a week alike. */
const warmDays = 300;
const warm = {
  id: 'w',
  placeId: 'bank',
  firstDate: '2027-01-01',
  tempMinC: Array.from({ length: warmDays }, (_, day) => 10 + (day % 7) / 2),
  tempMaxC: Array.from({ length: warmDays }, (_, day) => 22 + (day % 5) / 2),
  rainMm: Array(warmDays).fill(2),
  solarMJ: Array(warmDays).fill(null),
  forecastFrom: null,
  sources: [],
};

const bank = {
  id: 'bank',
  name: 'Pencarreg Bank',
  latitudeDeg: 52.08,
  longitudeDeg: -3.13,
  elevationM: 160,
  sunHours: 14,
};
const upper = {
  id: 'p1',
  name: 'Upper terrace',
  placeId: 'bank',
  class: 'long',
  start: 'raised-seedlings',
  startDate: '2027-02-20',
  soil: 'silt-loam',
};
const counted = (id: string, date: string, leavesGreen: number) => ({
  id,
  plantingId: 'p1',
  date,
  lookedAt: 10,
  leavesGreen,
});

function gardenFile(name: string, parts: object): string {
  const path = join(folder, `${name}.neckfall.json`);
  writeFileSync(
    path,
    JSON.stringify({ schema: 'neckfall/garden@1', places: [bank], plantings: [upper], ...parts }),
  );
  return path;
}

function documentOfAny(...args: string[]) {
  const { code, stdout, stderr } = neckfall(...args, '--years', '10', '--json');
  expect({ code, stderr: code === 0 ? '' : stderr }).toEqual({ code: 0, stderr: '' });
  return JSON.parse(stdout);
}

function documentOf(...args: string[]) {
  const document = documentOfAny(...args);
  validate(document);
  expect(validate.errors).toBeNull();
  return document;
}

const counts = [
  counted('a', '2027-05-25', 2.3),
  counted('b', '2027-06-04', 2.5),
  counted('c', '2027-06-14', 2.8),
];
const behind = gardenFile('behind', { observations: counts });
const today = ['--today', '2027-06-14'];

describe('season of a planting', () => {
  test('of which nothing was seen is the season of its place and plan', () => {
    const own = documentOf('season', gardenFile('bare', {}), '--planting', 'p1', ...today);
    const plan = [
      '--class',
      'long',
      '--start',
      'raised-seedlings',
      '--date',
      '2027-02-20',
      '--soil',
      'silt-loam',
    ];
    const plain = documentOf('season', '--at', '52.08,-3.13,160', '--sun', '14', ...plan, ...today);
    const { asOf, observations, effectiveDraws, learnt, standing, ...rest } = own;
    expect(rest).toEqual(plain);
    expect({ asOf, observations, effectiveDraws, learnt, standing }).toEqual({
      asOf: '2027-06-14',
      observations: 0,
      effectiveDraws: 10,
      learnt: [],
      standing: null,
    });
  });

  test('takes in what was seen: slow leaves, and how far behind they are', () => {
    const plain = documentOf('season', gardenFile('bare', {}), '--planting', 'p1', ...today);
    const document = documentOf('season', behind, '--planting', 'Upper terrace', ...today);
    expect(document.observations).toBe(3);
    expect(document.effectiveDraws).toBeGreaterThan(30);
    const pace = document.learnt.find(
      ({ parameter }: { parameter: string }) => parameter === 'leaf-pace-factor',
    );
    expect(pace.now).toBeGreaterThan(1.05);
    expect(pace.sentence).toContain('slower');
    expect(document.standing).toMatchObject({ date: '2027-06-14', leavesSeen: 2.8 });
    expect(document.standing.daysBehind).toBeGreaterThan(2);
    expect(document.neckFall.p50 > plain.neckFall.p50).toBe(true);
  });

  test('says it first after the headline', () => {
    const { stdout } = neckfall('season', behind, '--planting', 'p1', ...today, '--years', '10');
    const [headline, seen, table] = stdout.split('\n\n');
    expect(headline).toMatch(/^Pencarreg Bank: /);
    expect(seen).toContain('slower than is usual for the kind');
    expect(seen.replaceAll('\n', ' ')).toMatch(/you have 3: about \d+ days behind/);
    expect(table).toMatch(/^What to expect/);
  });

  test('leaves out what was seen after the day it is, and says so', () => {
    const { observations, asOf } = documentOf('season', behind, '--planting', 'p1', '--today', '2027-05-30');
    expect({ observations, asOf }).toEqual({ observations: 1, asOf: '2027-05-30' });
    const { stdout } = neckfall(
      'season',
      behind,
      '--planting',
      'p1',
      '--today',
      '2027-05-30',
      '--years',
      '3',
    );
    expect(stdout).toContain('2 notes of after 30 May are left out.');
  });

  test('meets the weather that the garden keeps of its place, up to the day it is', () => {
    const path = gardenFile('warm', { weather: [warm] });
    const plain = documentOf('season', gardenFile('bare', {}), '--planting', 'p1', ...today);
    const met = documentOf('season', path, '--planting', 'p1', ...today);
    expect(met.onset.p50 < plain.onset.p50).toBe(true);
    expect(met.assumed.join(' ')).toContain('1 January 2027 to 14 June 2027');
  });

  test('begins with what the planting that it learns from told', () => {
    const last = { ...upper, id: 'p0', name: 'Last year', startDate: '2026-02-20' };
    const tops = { id: 't', plantingId: 'p0', date: '2026-09-25', lookedAt: 20, topsOverShare: 0.3 };
    const learning = [last, { ...upper, learntFrom: 'p0' }];
    const path = gardenFile('last-year', { plantings: learning, observations: [tops] });
    const plain = documentOf('season', gardenFile('bare', {}), '--planting', 'p1', ...today);
    const told = documentOf('season', path, '--planting', 'p1', ...today);
    expect(told.neckFall.p50 > plain.neckFall.p50).toBe(true);
    expect(told.observations).toBe(0);
  });
});

const lastYear = { ...upper, id: 'p0', name: 'Last year', startDate: '2026-02-20' };
const fromLast = [lastYear, { ...upper, learntFrom: 'p0' }];
const before = 'What earlier plantings of this onion showed here is taken into account.';

describe('an earlier planting', () => {
  const tops = { id: 't', plantingId: 'p0', date: '2026-09-25', lookedAt: 20, topsOverShare: 0.3 };
  const said = (command: string, path: string) =>
    neckfall(command, path, '--planting', 'p1', ...today, '--years', '3').stdout.replaceAll(/\s+/g, ' ');

  test('is told of by season and when, and by neither where nothing was seen of it', () => {
    const path = gardenFile('told', { plantings: fromLast, observations: [tops] });
    const silent = gardenFile('silent', { plantings: fromLast });
    const plain = gardenFile('bare', {});
    for (const command of ['season', 'when']) {
      expect(said(command, path)).toContain(before);
      expect(said(command, silent)).toBe(said(command, plain));
    }
  });

  test('that can’t be grown as it stands is passed over', () => {
    const cultivar = 'Okoro’s Own';
    const [last, now] = fromLast.map((planting) => ({ ...planting, cultivar }));
    const plantings = [{ ...last, class: null }, now];
    const path = gardenFile('ungrown', { plantings, observations: [tops] });
    const { code, stderr } = neckfall('season', path, '--planting', 'p1', ...today, '--years', '3');
    expect({ code, stderr }).toEqual({ code: 0, stderr: '' });
  });
});

describe('the weather that a garden keeps', () => {
  const observed = { observations: [], weather: [warm] };

  test('is that of the point: another bed there has met it too', () => {
    const shade = { ...bank, id: 'shade', name: 'By the hedge' };
    const of = (placeId: string) =>
      gardenFile(`bed-${placeId}`, {
        ...observed,
        places: [bank, shade],
        plantings: [{ ...upper, placeId }],
      });
    const [own, other] = ['bank', 'shade'].map((id) =>
      documentOf('season', of(id), '--planting', 'p1', ...today),
    );
    expect(other.onset).toEqual(own.onset);
  });

  test('is not for a start to come, whatever is forecast: season and when are as without it (decision 36)', () => {
    const weather = { ...warm, forecastFrom: '2027-02-15' };
    const path = gardenFile('to-come', { weather: [weather] });
    const early = ['--today', '2027-02-14'];
    for (const command of ['season', 'when']) {
      const plain = documentOfAny(command, gardenFile('bare', {}), '--planting', 'p1', ...early);
      expect(documentOfAny(command, path, '--planting', 'p1', ...early)).toEqual(plain);
    }
    const started = ['--today', '2027-02-20'];
    expect(documentOf('season', path, '--planting', 'p1', ...started)).not.toEqual(
      documentOf('season', gardenFile('bare', {}), '--planting', 'p1', ...started),
    );
  });

  test('tells days that were forecast from those that were measured', () => {
    const path = gardenFile('forecast', { weather: [{ ...warm, forecastFrom: '2027-06-10' }] });
    const { assumed } = documentOf('season', path, '--planting', 'p1', ...today);
    const said = assumed.join(' ');
    expect(said).toContain('Days from 1 January 2027 to 9 June 2027 as measured');
    expect(said).toContain('Days from 10 June 2027 to 27 October 2027 as they were forecast');
    // 20 February to 9 June
    expect(said).toMatch(/ 110 of the \d+ days from 20 February 2027 to .* are measured and \d+ forecast/);
  });

  test('that can’t be of the place is refused by the name of the garden', () => {
    const path = gardenFile('alike', {
      weather: [{ ...warm, tempMinC: Array(warmDays).fill(10), tempMaxC: Array(warmDays).fill(20) }],
    });
    const { code, stderr } = neckfall('season', path, '--planting', 'p1', ...today);
    expect(code).toBe(3);
    expect(stderr).toContain(`${path}: every day has the same temperatures`);
    expect(stderr).not.toContain('--weather');
  });
});

test('a day of planting out before the sowing is passed over', () => {
  const path = gardenFile('out-first', { plantings: [{ ...upper, plantOutDate: '2027-02-01' }] });
  expect(documentOf('season', path, '--planting', 'p1', ...today)).toEqual(
    documentOf('season', gardenFile('bare', {}), '--planting', 'p1', ...today),
  );
});

describe('a planting that cannot be told of is refused in one line', () => {
  const bare = gardenFile('refused', {
    plantings: [upper, { ...upper, id: 'p2' }, { id: 'p3', name: 'Open', placeId: 'bank' }],
  });
  test.each([
    ['unknown', [bare, '--planting', 'nowhere'], 2, 'p1'],
    ['of a name that two have', [bare, '--planting', 'upper terrace'], 2, 'p2'],
    ['of which too little is said', [bare, '--planting', 'Open'], 3, 'start'],
    ['without its garden', ['--planting', 'p1'], 2, 'garden file'],
    ['not named at all', [bare], 2, '--planting'],
    ['with a plan besides', [bare, '--planting', 'p1', '--class', 'short'], 2, '--class'],
    ['of a file that is not there', [join(folder, 'none.json'), '--planting', 'p1'], 3, 'none.json'],
  ])('%s', (_, args, exit, named) => {
    const { code, stdout, stderr } = neckfall('season', ...args, ...today);
    expect({ code, stdout }).toEqual({ code: exit, stdout: '' });
    expect(stderr.trimEnd().split('\n')).toHaveLength(1);
    expect(stderr).toContain(named);
  });
});
