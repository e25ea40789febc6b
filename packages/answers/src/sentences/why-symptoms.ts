import type { Symptom } from '@neckfall/engine';
import type { Speaker } from '@neckfall/words';

export function symptomLabel(symptom: Symptom, { say }: Speaker): string {
  return say(`why.symptom.${symptom}`);
}

/** What tells it from its look-alikes. */
export function symptomNote(symptom: Symptom, { say }: Speaker): string {
  return say(`why.symptom-note.${symptom}`);
}
