import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { cultivars, findCultivar, searchCultivars } from '../../src/index.ts';

const nameOf = (text: string) => findCultivar(text).match?.name ?? null;

describe('finding an onion', () => {
  test('by its name and each other name', () => {
    for (const { name, aliases } of cultivars) {
      for (const text of [name, ...aliases]) expect(nameOf(text)).toBe(name);
    }
  });

  test.each([
    ['CREAMGOLD', 'Pukekohe Longkeeper'],
    ['cream gold', 'Pukekohe Longkeeper'],
    ['1015 y', 'Texas Grano 1015Y'],
    ['Redwing F1', 'Redwing'],
    ['red wing onions', 'Redwing'],
    ['alfa sao francisco', 'Alfa São Francisco'],
  ])('however "%s" is written', (text, name) => expect(nameOf(text)).toBe(name));

  test('offers names like it on a miss', () => {
    expect(findCultivar('Stutgarter')).toEqual({ match: null, nearest: ['Stuttgarter'] });
    expect(findCultivar('Bhima')).toMatchObject({
      match: null,
      nearest: expect.arrayContaining([expect.any(String)]),
    });
    expect(findCultivar('Xqzwvbnjk')).toEqual({ match: null, nearest: [] });
  });

  test('finds or offers a name with one letter changed', () => {
    const long = cultivars.filter(({ name }) => name.length >= 6);
    fc.assert(
      fc.property(fc.constantFrom(...long), fc.nat(), fc.constantFrom('', 'q'), ({ name }, at, letter) => {
        const place = at % name.length;
        const answer = findCultivar(name.slice(0, place) + letter + name.slice(place + 1));
        if (answer.match) expect(typeof answer.match.name).toBe('string');
        else expect(answer.nearest.length).toBeGreaterThan(0);
      }),
      { seed: 20270503, numRuns: 500 },
    );
  });

  test('takes any text', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary' }), (text) => {
        findCultivar(text);
        searchCultivars(text);
      }),
      { seed: 20270503, numRuns: 300 },
    );
  });
});

test('searching gives every onion with the text in a name, and none for nothing', () => {
  const found = searchCultivars('granex').map(({ name }) => name);
  expect(found).toEqual(['Granex 33', 'Granex 429', 'White Granex', 'Yellow Granex']);
  expect(searchCultivars('creamg').map(({ name }) => name)).toEqual(['Pukekohe Longkeeper']);
  expect(searchCultivars(' – ')).toEqual([]);
});
