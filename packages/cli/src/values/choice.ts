import type { Speaker } from '@neckfall/words';
import { nearest } from '../refusal/nearest.ts';
import { refuse } from '../refusal/refusal.ts';

/** One of the choices, whatever its case; else a refusal that offers the nearest. */
export function parseChoice<Choice extends string>(
  text: string,
  field: string,
  choices: readonly Choice[],
  { any }: Pick<Speaker, 'any'>,
): Choice {
  const typed = text.trim().toLowerCase();
  const match = choices.find((choice) => choice === typed);
  if (match !== undefined) return match;
  throw refuse('choice', {
    field,
    values: { value: text },
    expected: any(choices),
    nearest: nearest(typed, choices),
  });
}
