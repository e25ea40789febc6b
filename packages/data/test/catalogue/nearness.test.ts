import { describe, expect, test } from 'vitest';
import { countriesOf } from '../../src/catalogue/region-countries.ts';
import { cultivars, findCultivar, nearnessOf } from '../../src/index.ts';

/** Regions of the catalogue that are no part of a country or a few. */
const belts = ['tropics', 'lowland tropics', 'subtropics', 'temperate zones', 'many latitudes'];

describe('regions of the catalogue', () => {
  test('lie in countries, or are belts of the Earth', () => {
    const regions = [...new Set(cultivars.flatMap((cultivar) => cultivar.regions))];
    const nowhere = regions.filter((region) => countriesOf(region).length === 0);
    expect(nowhere.sort()).toEqual([...belts].sort());
  });

  // Common knowledge of the map.
  test.each([
    ['southern New Mexico', ['US']],
    ['Georgia, United States', ['US']],
    ['Punjab, Pakistan', ['PK']],
    ['Canterbury, New Zealand', ['NZ']],
    ['Niger', ['NE']],
    ['hills of India', ['IN']],
    ['Hokkaido', ['JP']],
  ])('%s lies in %s', (region, countries) => {
    expect(countriesOf(region)).toEqual(countries);
  });

  test('of several countries lie in each', () => {
    expect(countriesOf('northern Europe')).toEqual(expect.arrayContaining(['GB', 'FI', 'PL']));
    expect(countriesOf('northern Europe')).not.toContain('IT');
  });
});

describe('a name', () => {
  const nearness = (name: string, country: string) => {
    const { match } = findCultivar(name);
    if (!match) throw new Error(`${name} is not in the catalogue`);
    return nearnessOf(match, country);
  };

  // Where onions are sold: memory, as the catalogue says of each.
  test.each([
    ['Sturon', 'GB', 'sold'],
    ['Sturon', 'CH', 'sold'],
    ['Sturon', 'LU', 'neighbour'],
    ['Sturon', 'AR', 'far'],
    ['Creamgold', 'AU', 'sold'],
    ['Nasik Red', 'IN', 'sold'],
    ['Bhima Dark Red', 'IN', 'grown'],
    ['NuMex Arthur', 'US', 'grown'],
    ['NuMex Arthur', 'CA', 'neighbour'],
    ['Valcatorce INTA', 'US', 'far'],
    ['Bombay Red', 'KE', 'sold'],
    ['Bhima Shakti', 'KE', 'far'],
    ['Granex 33', 'XX', 'far'],
  ])('%s in %s is %s', (name, country, expected) => {
    expect(nearness(name, country)).toBe(expected);
  });
});
