import type { Choice, Kind } from '@neckfall/engine';
import { speaker } from '@neckfall/words';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  choicesHereFirst,
  countryOf,
  elsewhereSentence,
  kindsElsewhereSentence,
  namesHereFirst,
  namesOf,
  noNameHereSentence,
} from '../../src/index.ts';

const british = speaker('metric');

type Told = Partial<Pick<Kind, 'type' | 'start'>> & { names: readonly string[]; rank?: number };

/** A choice of which only its names, kind and rank matter. */
function choice({ names, rank = 1, type = 'northern-long', start = 'direct-seed' }: Told): Choice {
  return { rank, kind: { type, start, names } } as unknown as Choice;
}
const names = (choices: readonly Choice[]) => choices.map(({ kind }) => kind.names.join());

// Where onions are sold is memory, marked so in the catalogue.
describe('names', () => {
  test('come in the order of sold here, grown here, sold by neighbours, from afar', () => {
    const given = ['Valcatorce INTA', 'Jaune Paille des Vertus', 'Griffon', 'Sturon'];
    const here = ['Sturon', 'Griffon', 'Jaune Paille des Vertus', 'Valcatorce INTA'];
    expect(namesHereFirst(given, 'GB')).toEqual(here);
    expect(namesHereFirst(given, null)).toEqual(given);
  });

  test('of the grower’s own onions count as at hand', () => {
    expect(namesHereFirst(['Copra', 'Pencarreg Red'], 'GB')).toEqual(['Pencarreg Red', 'Copra']);
  });

  test('are cut to those known here, with a count of the rest', () => {
    const kind = choice({ names: ['Blush', 'Copra', 'Hercules', 'Stuttgarter'] });
    expect(namesOf(kind, british, 6, 'GB')).toBe('Hercules, Stuttgarter and 2 from elsewhere');
    expect(namesOf(kind, british, 1, 'GB')).toBe('Hercules and 3 more');
    expect(namesOf(kind, british, 6, 'KE')).toBe('Blush, Copra, Hercules and Stuttgarter');
    expect(namesOf(kind, british, 6)).toBe('Blush, Copra, Hercules and Stuttgarter');
  });
});

describe('choices', () => {
  test('that share a rank come with names known here first, in names too', () => {
    const level = [choice({ names: ['Cobriza INTA'] }), choice({ names: ['Copra', 'Hercules'] })];
    expect(names(choicesHereFirst(level, 'GB'))).toEqual(['Hercules,Copra', 'Cobriza INTA']);
  });

  test('of different ranks never change places', () => {
    const apart = [choice({ names: ['Cobriza INTA'] }), choice({ names: ['Sturon'], rank: 2 })];
    expect(names(choicesHereFirst(apart, 'GB'))).toEqual(['Cobriza INTA', 'Sturon']);
  });

  test('keep the better kind first where both have names known here', () => {
    const sets = choice({ names: ['Griffon'], start: 'sets' });
    const sown = choice({ names: ['Sturon'] });
    expect(names(choicesHereFirst([sets, sown], 'GB'))).toEqual(['Griffon', 'Sturon']);
  });

  test('stay the same ones, rank by rank, in any country', () => {
    const known = ['Sturon', 'Copra', 'Bombay Red', 'Cobriza INTA', 'Senshuki', 'Pencarreg Red'];
    const any = fc.record({
      names: fc.shuffledSubarray(known, { minLength: 1 }),
      rank: fc.integer({ min: 1, max: 3 }),
      start: fc.constantFrom('sets' as const, 'direct-seed' as const),
    });
    fc.assert(
      fc.property(fc.array(any), fc.constantFrom('GB', 'US', 'KE', 'XX', null), (told, country) => {
        const given = told.map(choice).sort((a, b) => a.rank - b.rank);
        const ordered = choicesHereFirst(given, country);
        expect(ordered.map(({ rank }) => rank)).toEqual(given.map(({ rank }) => rank));
        const sorted = (of: readonly Choice[]) =>
          of.map(({ rank, kind }) => `${rank} ${kind.start} ${[...kind.names].sort()}`).sort();
        expect(sorted(ordered)).toEqual(sorted(given));
      }),
      { seed: 5 },
    );
  });
});

describe('of names that are all from elsewhere', () => {
  const nasik = choice({ names: ['Nasik Red'], type: 'tropical-short' });
  const creole = choice({ names: ['Agrifound White', 'Red Creole'], type: 'tropical-short', rank: 9 });
  const sturon = choice({ names: ['Sturon'], start: 'sets', rank: 12 });
  const all = [nasik, creole, sturon];

  test('it says so, with those of the kind that are known here', () => {
    expect(elsewhereSentence(nasik, all, 'KE', british)).toBe(
      'As far as we know it is not sold or grown here (Kenya); of the same kind Red Creole is.',
    );
    const several = choice({ names: ['Nasik Red', 'Pusa Red'], type: 'tropical-short' });
    expect(elsewhereSentence(several, [several, creole], 'KE', british)).toContain('none of these is sold');
    expect(elsewhereSentence(creole, all, 'KE', british)).toBeNull();
    expect(elsewhereSentence(nasik, all, null, british)).toBeNull();
  });

  test('it says to ask for the kind where no name of it is known here', () => {
    expect(elsewhereSentence(sturon, all, 'KE', british)).toContain('ask for the kind');
    expect(kindsElsewhereSentence([nasik, sturon], all, 'KE', british)).toBe(
      'As far as we know no name of these kinds is sold or grown here (Kenya): northern long-day onions from sets. ' +
        'Ask for the kind.',
    );
    expect(kindsElsewhereSentence([nasik], all, 'KE', british)).toBeNull();
  });

  test('it says once that nothing is known of a country', () => {
    expect(noNameHereSentence(all, 'MN', british)).toContain('(Mongolia) is not known');
    expect(noNameHereSentence(all, 'KE', british)).toBeNull();
    expect(elsewhereSentence(nasik, all, 'MN', british)).toBeNull();
    expect(kindsElsewhereSentence(all, all, 'MN', british)).toBeNull();
  });
});

describe('the country of a place', () => {
  const town = { country: 'FI' } as never;
  test('is that of its town, or of a town near by', () => {
    expect(countryOf({ town, near: null })).toBe('FI');
    expect(countryOf({ town: null, near: { town, distanceKm: 10 } })).toBe('FI');
    expect(countryOf({ town: null, near: { town, distanceKm: 200 } })).toBeNull();
  });
});
