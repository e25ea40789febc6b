import { symptomLabel } from '@neckfall/answers';
import { type Symptom, symptoms } from '@neckfall/engine';
import type { Speaker } from '@neckfall/words';
import { nearest } from '../refusal/nearest.ts';

/** Shorter words are in too many names to tell anything. */
const tellingLetters = 4;
const mostNear = 2;

/** Symptoms whose names some words come near, by a letter or by a word of theirs; likeliest first. */
export function symptomsNear(text: string, speaker: Speaker): Symptom[] {
  const typed = text.toLowerCase();
  const named = new Map<string, Symptom>(
    symptoms.flatMap((symptom) =>
      namesOf(symptom, speaker).map((name): [string, Symptom] => [name, symptom]),
    ),
  );
  const close = nearest(typed, [...named.keys()]).flatMap((name) => named.get(name) ?? []);
  const found = close.length > 0 ? close : sharing(wordsOf(typed), speaker);
  return [...new Set(found)].slice(0, mostNear);
}

/** Those of which most of the words are a name's too, the ends of words apart. */
function sharing(words: readonly string[], speaker: Speaker): Symptom[] {
  const telling = words.filter(({ length }) => length >= tellingLetters);
  return symptoms
    .map((symptom) => {
      const own = namesOf(symptom, speaker).flatMap(wordsOf);
      return { symptom, shared: telling.filter((word) => own.some((of) => isAlike(word, of))).length };
    })
    .filter(({ shared }) => shared > 0)
    .sort((a, b) => b.shared - a.shared)
    .map(({ symptom }) => symptom);
}

function isAlike(word: string, of: string): boolean {
  return of.length >= tellingLetters && (word.startsWith(of) || of.startsWith(word));
}

function namesOf(symptom: Symptom, speaker: Speaker): string[] {
  const called = speaker.say(`why.called.${symptom}`).split(',');
  return [symptom, symptomLabel(symptom, speaker), ...called].map((name) => name.trim().toLowerCase());
}

function wordsOf(text: string): string[] {
  return text.split(/[^\p{L}\p{N}]+/u).filter((word) => word !== '');
}
