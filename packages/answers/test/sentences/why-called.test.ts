import { allMessages, languages, loadLanguage, loadLater, speaker, usEnglish } from '@neckfall/words';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Symptom, symptoms } from '../../../engine/src/index.ts';
import { symptomCalled, symptomLabel } from '../../src/index.ts';

await loadLater();
await loadLanguage('es');
const voices = [speaker('metric'), speaker('us'), speaker('metric', 'es')];
const [british, american, spanish] = voices;

const calledIn = (messages: Partial<Record<string, string>>, symptom: Symptom) =>
  (messages[`why.called.${symptom}`] ?? '').split(', ').filter((word) => word !== '');

describe.each(voices)('in the voice of $locale', (voice) => {
  test.each(symptoms)('%s is found by its id, its label and each of its words', (symptom) => {
    const words = voice.say(`why.called.${symptom}`).split(', ');
    expect(words.length).toBeGreaterThan(5);
    for (const word of [symptom, symptomLabel(symptom, voice), ...words])
      expect([word, symptomCalled(word, voice)]).toEqual([word, symptom]);
  });
});

test('a word is in one list alone, once, in small letters', async () => {
  const lists = [
    await usEnglish(),
    ...(await Promise.all(languages.map((language) => allMessages(language)))),
  ];
  expect(lists).toHaveLength(3);
  for (const list of lists) {
    const words = symptoms.flatMap((symptom) => calledIn(list, symptom));
    expect(words.filter((word, at) => words.indexOf(word) !== at)).toEqual([]);
    expect(words.filter((word) => word !== word.toLowerCase() || word !== word.trim())).toEqual([]);
  }
});

test.each([
  ['went to seed', 'flowered'],
  ['Bolting', 'flowered'],
  ['my onions bolted', 'flowered'],
  ['seed-stems', 'flowered'],
  ['they have flower stalks', 'flowered'],
  ['no bulbs', 'no-bulb'],
  ["didn't bulb", 'no-bulb'],
  ['all leaves', 'no-bulb'],
  ['rotten', 'soft'],
  ['the bulbs are slimy', 'soft'],
  ['rotten in storage', 'rotted-in-store'],
  ['went mouldy', 'rotted-in-store'],
  ['went moldy', 'rotted-in-store'],
  ['they sprouted', 'sprouted'],
  ['green shoots', 'sprouted'],
  ['tiny', 'small'],
  ['my bulbs are too small', 'small'],
  ['doubles', 'split'],
  ['two in one', 'split'],
  ['bull necks', 'thick-necks'],
  ['bottleneck', 'thick-necks'],
  ['not ripe', 'tops-stood'],
  ['tops never went over', 'tops-stood'],
  ['fell over too early', 'fell-early'],
  ['winter-killed', 'died-in-winter'],
  ['frost heave', 'out-of-the-ground'],
  ['damping off', 'seedlings-toppled'],
  ['poor germination', 'few-came-up'],
  ['cutworms', 'gone-in-a-row'],
  ['tipburn', 'dry-tips'],
  ['Thrips', 'silver-streaks'],
  ['downy mildew', 'grey-fur'],
  ['purple blotch', 'purple-spots'],
  ['yellowing leaves', 'wilted'],
  ['leaves are yellow', 'wilted'],
  ['white rot', 'white-fluff'],
  ['gray mold', 'neck-rot'],
  ['grey mould', 'neck-rot'],
  ['maggots in my onions', 'maggots'],
  ['sunscald', 'scalded'],
  ['black powder', 'black-dust'],
  ['frozen', 'glassy'],
  ['hard core', 'stalk-in-bulb'],
  ['too strong', 'too-hot'],
] as const)('"%s" is what people say for %s', (text, symptom) => {
  // who speaks Spanish may have read the English word
  for (const voice of voices) expect(symptomCalled(text, voice)).toBe(symptom);
});

test.each([
  ['se subieron a flor', 'flowered'],
  ['espigadas', 'flowered'],
  ['SIN BULBO', 'no-bulb'],
  ['no hicieron bulbos', 'no-bulb'],
  ['las cebollas estan podridas', 'soft'],
  ['raices rosadas', 'pink-roots'],
  ['mildiú', 'grey-fur'],
  ['muy pequeñas', 'small'],
  ['brotaron', 'sprouted'],
] as const)('«%s» is what people say for %s in Spanish', (text, symptom) => {
  expect(symptomCalled(text, spanish)).toBe(symptom);
});

test('a Spanish word says nothing to who speaks English', () => {
  expect(symptomCalled('espigadas', british)).toBeNull();
});

test.each([
  '',
  ' ',
  'onions',
  'the',
  '-',
  'green',
  'xyzzy',
  'no',
  'carrots failed',
  'constructor',
  '__proto__',
  'bulb',
])('"%s" names nothing', (text) => {
  for (const voice of voices) expect(symptomCalled(text, voice)).toBeNull();
});

test('capitals, accents, hyphens, filler words and the order of words make no difference', () => {
  const phrases = symptoms.flatMap((symptom) =>
    american
      .say(`why.called.${symptom}`)
      .split(', ')
      .map((phrase) => ({ phrase, symptom })),
  );
  fc.assert(
    fc.property(
      fc.constantFrom(...phrases),
      fc.constantFrom('-', ' ', '  ', ' the ', ', '),
      fc.boolean(),
      fc.nat(),
      ({ phrase, symptom }, between, reversed, accentAt) => {
        const words = phrase.split(' ');
        const said = (reversed ? words.reverse() : words).join(between);
        const at = accentAt % said.length;
        const accented = `${said.slice(0, at + 1)}${/[a-z]/.test(said[at]) ? '\u0301' : ''}${said.slice(at + 1)}`;
        expect(symptomCalled(accented.toLocaleUpperCase(), american)).toBe(symptom);
      },
    ),
    { seed: 8, numRuns: 300 },
  );
});
