import type { WhyAnswer } from '@neckfall/engine';
import type { Speaker } from '@neckfall/words';

/** What to do today, for each symptom, then whether what is there can be eaten and stored. */
export function rescueSentences(
  { rescue: { symptoms, eating, storing } }: Pick<WhyAnswer, 'rescue'>,
  { say }: Speaker,
): string[] {
  return [
    ...symptoms.map((symptom) => say(`why.rescue.${symptom}`)),
    say(`why.eating.${eating}`),
    say(`why.storing.${storing}`),
  ];
}

/** What to take care of. */
export function whyCautionSentences({ cautions }: Pick<WhyAnswer, 'cautions'>, { say }: Speaker): string[] {
  return cautions.map((caution) => say(`why.caution.${caution}`));
}
