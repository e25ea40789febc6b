import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { Ajv } from 'ajv';
import { afterAll, describe, expect, test } from 'vitest';
import type { WhyDocument } from '../src/documents/why-schema.ts';
import { neckfall } from './run-neckfall.ts';

const folder = mkdtempSync(join(tmpdir(), 'neckfall-why-planting-'));
afterAll(() => rmSync(folder, { recursive: true }));
const schema = JSON.parse(readFileSync(new URL('../schemas/why@1.json', import.meta.url), 'utf8'));
const validate = new Ajv({ strict: true, allErrors: true }).compile(schema);
const example = readFileSync(
  new URL('../../../docs/examples/pencarreg.neckfall.json', import.meta.url),
  'utf8',
);

const quick = ['--today', '2028-02-01', '--years', '4'];

function gardenWith(name: string, parts: object): string {
  const path = join(folder, `${name}.neckfall.json`);
  writeFileSync(path, JSON.stringify({ ...JSON.parse(example), ...parts }));
  return path;
}

function documentOf(...args: string[]): WhyDocument {
  const { code, stdout, stderr } = neckfall('why', ...args, ...quick, '--json');
  expect(code, stderr).toBe(0);
  const document = JSON.parse(stdout);
  expect(validate(document), JSON.stringify(validate.errors)).toBe(true);
  return document;
}

const kitchen = {
  people: 3,
  gramsPerWeek: 600,
  store: null,
  storeTempC: 19,
  storeHumidityPct: 45,
  likes: [],
};
const bare = gardenWith('bare', { observations: [] });

describe('a planting of a garden', () => {
  test('has said what its fields say, those of its bed too', () => {
    const { planting, plan, said, place } = documentOf(bare, '--planting', 'okoro', '--seen', 'small');
    expect(planting).toBe('okoro');
    expect(plan).toMatchObject({ start: 'sets', date: '2027-04-05', setSizeMm: 16, soil: 'silt-loam' });
    expect(said).toEqual(
      expect.arrayContaining(['onion', 'start', 'date', 'setSizeMm', 'densityPerM2', 'soil', 'sunHours']),
    );
    expect(said).not.toContain('setStore');
    expect(place.latitudeDeg).toBeCloseTo(52.08);
  });

  test('is judged by the season that was seen of it', () => {
    const seen = (leavesGreen: number) =>
      gardenWith(`seen-${leavesGreen}`, {
        observations: [
          { id: 'n1', plantingId: 'okoro', date: '2027-05-20', leavesGreen, lookedAt: 10 },
          { id: 'n2', plantingId: 'okoro', date: '2027-06-05', leavesGreen: leavesGreen + 1, lookedAt: 10 },
        ],
      });
    const grown = (path: string) => {
      const args = [path, '--planting', 'okoro', '--seen', 'small', '--years', '30'];
      return documentOf(...args).asGrown.bulbDiameterMm.p50 ?? 0;
    };
    const [poor, rich] = [grown(seen(2)), grown(seen(7))];
    expect(poor).toBeLessThan(rich);
  });

  test('was kept where the kitchen of the garden keeps onions, unless it is said otherwise', () => {
    const inKitchen = gardenWith('kitchen', { kitchen, observations: [] });
    const asked = [inKitchen, '--planting', 'okoro', '--seen', 'sprouted', '--noticed', '2028-01'];
    const warm = documentOf(...asked);
    const cold = documentOf(...asked, '--store', '2,65');
    const store = ({ assumed }: WhyDocument) =>
      assumed.filter((words) => words.startsWith('Where they were kept'));
    expect(store(warm)).toEqual([]);
    expect(store(documentOf(bare, ...asked.slice(1)))).toHaveLength(1);
    expect(warm.asGrown.soundShare).toBeLessThan(cold.asGrown.soundShare ?? 0);
    expect(warm.noticed).toBe('2028-01-15');
  });

  test('readings of its store are the store that it was kept in', () => {
    const read = (tempC: number) =>
      gardenWith(`read-${tempC}`, {
        observations: [],
        kitchen: {
          ...kitchen,
          store: 'cellar',
          storeTempC: null,
          storeHumidityPct: null,
          storeReadings: [{ date: '2027-10-12', store: 'cellar', tempC, humidityPct: null }],
        },
      });
    const sound = (path: string) =>
      documentOf(path, '--planting', 'okoro', '--seen', 'sprouted', '--noticed', '2028-01').asGrown
        .soundShare;
    expect(sound(read(15))).toBeLessThan(sound(read(3)) ?? 0);
  });

  test('grew in the weather that the garden keeps', () => {
    const days = 300;
    const weather = {
      id: 'w',
      placeId: 'bank',
      firstDate: '2027-01-01',
      tempMinC: Array.from({ length: days }, (_, day) => 12 + (day % 7) / 2),
      tempMaxC: Array.from({ length: days }, (_, day) => 24 + (day % 5) / 2),
      rainMm: Array(days).fill(2),
      solarMJ: Array(days).fill(null),
      forecastFrom: null,
      sources: [],
    };
    const asked = ['--planting', 'okoro', '--seen', 'small'];
    const warm = documentOf(gardenWith('warm', { weather: [weather], observations: [] }), ...asked);
    const usual = documentOf(bare, ...asked);
    expect(warm.asGrown.neckFall && warm.asGrown.neckFall < (usual.asGrown.neckFall ?? '')).toBe(true);
    // of days that came, no year to come is told
    const day = (date: string | null | undefined) => date?.slice(5) ?? '';
    expect(day(warm.nextYear?.neckFall) > day(warm.asGrown.neckFall)).toBe(true);
  });

  test('its file stays as it is', () => {
    const before = readFileSync(bare, 'utf8');
    documentOf(bare, '--planting', "Bram's sets", '--seen', 'split');
    expect(readFileSync(bare, 'utf8')).toBe(before);
  });
});
