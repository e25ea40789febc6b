import { expect, test } from 'vitest';
import { practiceTests } from './practice.ts';
import { northernPlaces } from './practice-places.ts';

/**
 * Where the model does not tell what growers know, by check and place. What is mended must be taken off the list; no
 * place may join it.
 */
const known: Record<string, readonly string[]> = {
  // seed in place is thin practice at 57–60° N: the model has it ripe too late, or small, in half of the years
  'northern places: direct-seed of the long class has a window': ['Aberdeen', 'Stockholm', 'Helsinki'],
  // a winter so mild that plants grow all through it and flower
  'mild north: direct-seed from 08-08 to 09-20 is in time': ['Brest'],
  // hot days of May end the crop while light is best
  'bulbs begun at 12–14 leaves and 25/m² are at least 64 mm and 13 g dry': ['Behbahan'],
};

const tests = practiceTests();

test('every check that is listed is made', () => {
  expect(tests.map(({ name }) => name)).toEqual(expect.arrayContaining(Object.keys(known)));
});

test.each(tests.map((check) => ({ ...check, title: `${check.name} (${check.source})` })))(
  '$title',
  ({ name, misses, found }) => {
    const places = misses.map((miss) => miss.split(':')[0]);
    expect(places, `${found}\n${misses.join('\n')}`).toEqual(known[name] ?? []);
    if (name.startsWith('northern places'))
      expect(northernPlaces.length - places.length).toBeGreaterThanOrEqual(25);
  },
);
