import { loadLanguage, loadLater, speaker } from '@neckfall/words';
import { beforeAll, expect, test } from 'vitest';
import { peopleIn } from '../../src/index.ts';

beforeAll(async () => {
  await Promise.all([loadLater(), loadLanguage('es')]);
});

test.each([
  ['how many for a family of four?', 4],
  ['onions for 6 people', 6],
  ['how many onions for 4 people', 4],
  ['how many for a 3 person household', 3],
  ['how many do we need for two', 2],
  ['there are ten of us, how many', 10],
  ['how many for 2 adults and 3 children', 5],
  ['how many for one person', 1],
  ['how many for a year', null],
  ['how many for 2 years', null],
  ['how many fit in 4 m²', null],
  ['how many do people eat', null],
])('"%s" is about %s', (text, people) => {
  expect(peopleIn(text, speaker('metric'))).toBe(people);
  // English is understood whatever the language
  expect(peopleIn(text, speaker('metric', 'es'))).toBe(people);
});

test.each([
  ['¿cuántas para 4 personas?', 4],
  ['¿cuántas para una familia de seis?', 6],
  ['somos cinco, ¿cuántas?', 5],
  ['cuántas para diez', 10],
  ['cuántas para un año', null],
  ['cuántas para 2 años', null],
])('"%s" is about %s', (text, people) => {
  expect(peopleIn(text, speaker('metric', 'es'))).toBe(people);
});
