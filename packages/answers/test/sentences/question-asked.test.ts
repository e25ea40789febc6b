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
  ['why did they go to seed', 'sets-flower'],
  ['what kind should I buy', 'which-onion'],
  ['is it too late to plant', 'too-late'],
  ['my bulbs are tiny', 'too-small'],
  ['windowsill', 'start-indoors'],
  ['overwintering', 'sow-autumn'],
  ['how many for a family', 'how-many'],
  ['seed from my grandmother', 'from-abroad'],
])('"%s" means %s', (text, question) => {
  expect(questionsMeant(text, speaker('metric')).meant).toBe(question);
});

test('words of no question mean none', () => {
  for (const text of ['', '   ', 'the', 'xyzzyq', '?!'])
    expect(questionsMeant(text, speaker('metric'))).toEqual({ meant: null, near: [] });
});
