import { describe, expect, test } from 'vitest';
import { findTowns } from '../../src/places/index.ts';
import { loadGazetteer } from '../../src/places/node.ts';

const gazetteer = loadGazetteer();
const search = (query: string) => findTowns(gazetteer, query, 8);
const first = (query: string) => search(query).towns[0];

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
    expect(search('Ham').towns.map((town) => town.name)).toContain('Hamburg');
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
      expect(search(query)).toEqual({ towns: [], fit: 'guess' });
    },
  );

  test.each([0, -1, 1.5, 101, Number.NaN, Number.POSITIVE_INFINITY])('refuses the limit %s', (limit) => {
    expect(() => findTowns(gazetteer, 'Lyon', limit)).toThrow(`limit ${limit}: a whole number from 1 to 100`);
  });

  // Which state or country a town lies in: common knowledge of the map.
  test.each([
    ['springfield mo', 'US', 'MO'],
    ['springfield missouri', 'US', 'MO'],
    ['Springfield, MO', 'US', 'MO'],
    ['Springfield Missouri USA', 'US', 'MO'],
    ['Springfield, OR, United States', 'US', 'OR'],
    ['Paris (Texas)', 'US', 'TX'],
    ['houston tx', 'US', 'TX'],
    ['billings mt', 'US', 'MT'],
    ['billings mt usa', 'US', 'MT'],
    ['st louis mo', 'US', 'MO'],
    ['washington dc', 'US', 'DC'],
    ['york pa', 'US', 'PA'],
    ['new york ny', 'US', 'NY'],
    ['aberdeen scotland', 'GB', 'SCT'],
    ['newport wales', 'GB', 'WLS'],
    ['newport wa', 'US', 'WA'],
    ['newport wa usa', 'US', 'WA'],
    ['bangor northern ireland', 'GB', 'NIR'],
    ['newcastle nsw', 'AU', 'NSW'],
    ['london ontario', 'CA', 'ON'],
    ['london uk', 'GB', 'ENG'],
    ['nashik india', 'IN', null],
    ['christchurch nz', 'NZ', null],
    ['christchurch new zealand', 'NZ', null],
    ['al ain uae', 'AE', null],
    ['san jose costa rica', 'CR', null],
    ['port of spain trinidad and tobago', 'TT', null],
    ['batumi georgia', 'GE', null],
    ['rome georgia', 'US', 'GA'],
    ['edinbrugh scotland', 'GB', 'SCT'],
    ['sprngfeld mo', 'US', 'MO'],
  ])('reads the last words of "%s" as where the town is', (query, country, region) => {
    expect(first(query)).toMatchObject({ country, region });
  });

  test.each([
    ['york', 'York', 'GB'],
    ['new york', 'New York City', 'US'],
    ['san luis obispo', 'San Luis Obispo', 'US'],
    ['newcastle upon tyne', 'Newcastle upon Tyne', 'GB'],
    ['mexico', 'Mexico City', 'MX'],
    ['kansas city', 'Kansas City', 'US'],
  ])('takes "%s" whole for a name before it takes a word of it for a place', (query, name, country) => {
    expect(first(query)).toMatchObject({ name, country });
    expect(search(query).fit).toBe('called');
  });

  test('narrows towns while the state is being typed, and leaves the others of the name below', () => {
    const { towns, fit } = search('springfield oreg');
    expect(fit).toBe('begun');
    expect(towns.map(({ region }) => region).slice(0, 2)).toEqual(['OR', 'MO']);
    expect(search('springf, oreg').towns[0]).toMatchObject({ name: 'Springfield', region: 'OR' });
  });

  test('knows that a space after a name ends a word, not the name', () => {
    expect(search('springfield ')).toEqual(search('springfield'));
  });

  test('offers towns of the name where the place is unknown or has none', () => {
    expect(search('aberdeen wales').fit).toBe('guess');
    expect(search('aberdeen wales').towns[0]).toMatchObject({ name: 'Aberdeen', region: 'SCT' });
    expect(search('springfield narnia').towns[0].name).toBe('Springfield');
  });

  // Codes of places that anyone can look up; their shapes from memory.
  test.each([
    '90210',
    '90210-1234',
    '3000',
    'SW1A',
    'sw1a 1aa',
    'K1A 0B1',
    '1012 AB',
    '100-0001',
    '114 55',
    'D02 X285',
  ])('says that %s is a postal code', (query) => {
    expect(search(query)).toEqual({ towns: [], fit: 'postcode' });
  });

  test.each([
    ['melbourne 3000', 'AU'],
    ['Beverly Hills, CA 90210', 'US'],
    ['1012 AB Amsterdam', 'NL'],
    ['London SW1A 1AA', 'GB'],
    ['100 Mile House', 'CA'],
  ])('leaves the code out of "%s"', (query, country) => {
    expect(first(query)).toMatchObject({ country });
  });
});
