import { type Speaker, speaker } from '@neckfall/words';
import type { Asked } from './read-attributes.ts';

const speakers = new Map<string, Speaker>();

/** The words are in the one file: nothing has to be fetched for them. */
export function elementSpeaker({ units, language }: Pick<Asked, 'units' | 'language'>): Speaker {
  const key = `${units} ${language}`;
  const known = speakers.get(key) ?? speaker(units, language);
  speakers.set(key, known);
  return known;
}
