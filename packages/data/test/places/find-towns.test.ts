import { describe, expect, test } from 'vitest';
import { findTowns } from '../../src/places/index.ts';
import { loadGazetteer } from '../../src/places/node.ts';

const gazetteer = loadGazetteer();
const first = (query: string) => findTowns(gazetteer, query, 8)[0];

describe('searching towns', () => {
  test.each([
    ['lyo', 'Lyon', 'FR'],
    ['ZURI', 'Zürich', 'CH'],
    ['münche', 'Munich', 'DE'],
    ['Firenze', 'Florence', 'IT'],
    ['bombay', 'Mumbai', 'IN'],
    ['st helie', 'Saint Helier', 'JE'],
  ])('"%s" offers %s first', (query, name, country) => {
    expect(first(query)).toMatchObject({ name, country });
  });

  test('puts a town of exactly that name before more populous longer names', () => {
    expect(first('Ham')).toMatchObject({ name: 'Ham', country: 'FR' });
    expect(findTowns(gazetteer, 'Ham', 8).map((town) => town.name)).toContain('Hamburg');
  });

  test.each([
    ['Lyno', 'Lyon'],
    ['Birmigham', 'Birmingham'],
    ['Barcelonna', 'Barcelona'],
    ['Philadelpiha', 'Philadelphia'],
    ['Sprngfeld', 'Springfield'],
    ['Marsellie', 'Marseille'],
  ])('forgives "%s" for %s', (query, name) => {
    expect(first(query).name).toBe(name);
  });

  test.each(['', '   ', '!?', 'Москва', 'zq', 'zzzzqqqqxxxx', 'constructor x y z', 'x'.repeat(10_000)])(
    'finds nothing for "%.20s"',
    (query) => {
      expect(findTowns(gazetteer, query, 8)).toEqual([]);
    },
  );

  test.each([0, -1, 1.5, 101, Number.NaN, Number.POSITIVE_INFINITY])('refuses the limit %s', (limit) => {
    expect(() => findTowns(gazetteer, 'Lyon', limit)).toThrow(`limit ${limit}: a whole number from 1 to 100`);
  });
});
