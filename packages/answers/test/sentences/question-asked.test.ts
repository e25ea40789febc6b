import { commonQuestions } from '@neckfall/engine';
import { loadLanguage, loadLater, speaker } from '@neckfall/words';
import { beforeAll, expect, test } from 'vitest';
import { questionAsked, questionsMeant } from '../../src/index.ts';

beforeAll(async () => {
  await Promise.all([loadLater(), loadLanguage('es')]);
});

test('every question is found by its name and by itself, in each voice', () => {
  for (const voice of [speaker('metric'), speaker('us'), speaker('metric', 'es')])
    for (const question of commonQuestions) {
      expect(questionsMeant(question, voice).meant).toBe(question);
      expect(questionsMeant(questionAsked(question, voice), voice).meant).toBe(question);
    }
});

test.each([
  ['supermarket', 'kitchen-onions'],
  ['Can I plant an onion from the grocery store?', 'kitchen-onions'],
  ['mine never bulbed', 'never-bulbed'],
  ['all top and no bulb', 'never-bulbed'],
  ['they only made leaves', 'never-bulbed'],
  ['why did they go to seed', 'sets-flower'],
  ['my sets bolted', 'sets-flower'],
  ['what kind should I buy', 'which-onion'],
  ['which variety should I grow', 'which-onion'],
  ['what is the best onion for my garden', 'which-onion'],
  ['is it too late to plant', 'too-late'],
  ['can I still sow now', 'too-late'],
  ['is December too late for sets', 'too-late'],
  ['when is it too late to sow?', 'too-late'],
  ['my bulbs are tiny', 'too-small'],
  ['why are they the size of a walnut', 'too-small'],
  ['how do I get bigger onions', 'too-small'],
  ['windowsill', 'start-indoors'],
  ['when can I start seed indoors', 'start-indoors'],
  ['overwintering', 'sow-autumn'],
  ['can I leave them in over winter', 'sow-autumn'],
  ['will they stand the winter', 'sow-autumn'],
  ['how many for a family', 'how-many'],
  ['how many onions for 4 people', 'how-many'],
  ['how many for a family of four?', 'how-many'],
  ['onions for 6 people', 'how-many'],
  ['how long will they keep', 'how-many'],
  ['seed from my grandmother', 'from-abroad'],
  ['my cousin in Holland sent me seed', 'from-abroad'],
  ['will seed from another country do here', 'from-abroad'],
])('"%s" means %s', (text, question) => {
  expect(questionsMeant(text, speaker('metric')).meant).toBe(question);
});

test.each([
  ['¿cuántas para 4 personas?', 'how-many'],
  ['cebollas para seis personas', 'how-many'],
  ['qué variedad cultivo', 'which-onion'],
  ['son como nueces', 'too-small'],
  ['¿puedo dejarlas en la tierra en invierno?', 'sow-autumn'],
  ['mi primo de Holanda me mandó semilla', 'from-abroad'],
  ['solo echaron hojas', 'never-bulbed'],
  ['se me espigaron', 'sets-flower'],
  ['¿cuándo siembro en semillero?', 'start-indoors'],
  ['¿es tarde para plantar?', 'too-late'],
])('in Spanish "%s" means %s', (text, question) => {
  expect(questionsMeant(text, speaker('metric', 'es')).meant).toBe(question);
});

test.each([
  ['when do I sow?', 'when'],
  ['when should I plant onions', 'when'],
  ['what month do I sow in', 'when'],
  ['when do sets go in', 'when'],
  ['sets or seed?', 'which'],
  ['is seed better than sets', 'which'],
  ['which keeps longest', 'which'],
  ['my onions rot', 'why'],
  ['thick necks', 'why'],
  ['the leaves turn yellow', 'why'],
  ['why did my onions split', 'why'],
] as const)('"%s" is none of the ten, and %s helps', (text, command) => {
  expect(questionsMeant(text, speaker('metric'))).toMatchObject({ meant: null, elsewhere: command });
});

test.each([
  ['¿cuándo siembro?', 'when'],
  ['¿cuándo planto las cebollas?', 'when'],
  ['¿bulbillos o semilla?', 'which'],
  ['mis cebollas se pudren', 'why'],
  ['cuellos gruesos', 'why'],
] as const)('in Spanish "%s" is none of the ten, and %s helps', (text, command) => {
  expect(questionsMeant(text, speaker('metric', 'es'))).toMatchObject({ meant: null, elsewhere: command });
});

test('what the ten leave out is not taken for one of them', () => {
  for (const text of [
    'how deep do I plant them',
    'how much fertiliser',
    'do onions need lime',
    'can dogs eat onions',
    'water',
  ])
    expect(questionsMeant(text, speaker('metric')).meant).toBeNull();
  expect(questionsMeant('agua', speaker('metric', 'es')).meant).toBeNull();
});

test('words of no question mean none', () => {
  for (const text of ['', '   ', 'the', 'xyzzyq', '?!'])
    expect(questionsMeant(text, speaker('metric'))).toEqual({ meant: null, near: [], elsewhere: null });
});
