import { symptoms } from '@neckfall/engine';
import { loadLanguage, loadLater, speaker } from '@neckfall/words';
import { describe, expect, test } from 'vitest';
import { symptomLabel, symptomsLike } from '../../src/index.ts';

await loadLater();
await loadLanguage('es');
const english = speaker('metric', 'en');
const spanish = speaker('metric', 'es');

describe('what went wrong, in words of one’s own', () => {
  test.each([
    ['Why did mine never bulb?', 'no-bulb'],
    ['Why did they flower?', 'flowered'],
    ['bolt', 'flowered'],
    ['seeds did not germinate', 'few-came-up'],
    ['my onions are tiny', 'small'],
    ['mouldy neck', 'neck-rot'],
    ['hollow stem', 'stalk-in-bulb'],
    ['pink', 'pink-roots'],
    ['fell over too soon', 'fell-early'],
    ['they sprouted', 'sprouted'],
    ['taste too strong', 'too-hot'],
  ])('%s: %s comes first', (text, symptom) => {
    expect(symptomsLike(text, english)[0]).toBe(symptom);
  });

  test.each([
    ['They rotted in January', ['rotted-in-store', 'soft', 'neck-rot']],
    ['frozen in the shed', ['rotted-in-store', 'glassy']],
  ])('%s: all that it may be is there', (text, meant) => {
    const like = symptomsLike(text, english);
    expect(like).toEqual(expect.arrayContaining(meant));
    expect(like[0]).toBe(meant[0]);
  });

  test('in Spanish too', () => {
    expect(symptomsLike('no hicieron bulbo', spanish)[0]).toBe('no-bulb');
    expect(symptomsLike('se pudrieron', spanish)).toContain('rotted-in-store');
  });

  test('each is found by its label, and as that is being typed', () => {
    for (const voice of [english, spanish])
      for (const symptom of symptoms) {
        const label = symptomLabel(symptom, voice);
        expect(symptomsLike(label, voice)[0]).toBe(symptom);
        expect(symptomsLike(label.slice(0, -1), voice)).toContain(symptom);
      }
  });

  test('nothing is found by what means nothing', () => {
    for (const text of ['', '  ', 'zzzz', '?!', 'the of and'])
      expect(symptomsLike(text, english)).toEqual([]);
  });
});
