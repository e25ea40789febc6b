import { type Symptom, symptoms } from '@neckfall/engine';
import { type Speaker, speaker as speakerOf } from '@neckfall/words';

/** Symptoms by what they are called in one voice, words in any order. */
type Called = { fillers: ReadonlySet<string>; symptoms: ReadonlyMap<string, Symptom> };

const known = new Map<Speaker['locale'], Called>();

/**
 * The symptom that some words name: its id, its label, or another word that growers use for it, in the speaker's language or
 * in English; capitals, accents, hyphens, the order of words, words that tell nothing and a plural s make no difference.
 * Null: none is called so.
 */
export function symptomCalled(text: string, speaker: Speaker): Symptom | null {
  for (const voice of [speaker, speakerOf('metric'), speakerOf('us')]) {
    const called = calledBy(voice);
    const symptom = called.symptoms.get(inOrder(text, called.fillers));
    if (symptom) return symptom;
  }
  return null;
}

function calledBy({ say, locale }: Speaker): Called {
  const found = known.get(locale);
  if (found) return found;
  const fillers = new Set(wordsOf(say('why.called-filler')));
  const named = new Map<string, Symptom>();
  for (const symptom of symptoms) {
    const names = say(`why.called.${symptom}`).split(',');
    for (const name of [symptom, say(`why.symptom.${symptom}`), ...names])
      named.set(inOrder(name, fillers), symptom);
  }
  const called = { fillers, symptoms: named };
  known.set(locale, called);
  return called;
}

/** Its words without those that tell nothing, in the order of the alphabet, so that "bulbs too small" is "too small bulbs". */
function inOrder(text: string, fillers: ReadonlySet<string>): string {
  return wordsOf(text)
    .filter((word) => !fillers.has(word))
    .sort()
    .join(' ');
}

export function wordsOf(text: string): string[] {
  return text
    .normalize('NFKD')
    .toLowerCase()
    .replace(/[\p{M}'’‘]/gu, '')
    .split(/[^\p{L}\p{N}]+/u)
    .filter((word) => word !== '')
    .map((word) => word.replace(/(?<=..)s$/, ''));
}
