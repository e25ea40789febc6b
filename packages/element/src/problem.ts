import type { Speaker } from '@neckfall/words';

/** An attribute that says nothing the element knows. */
export type Problem = {
  attribute: string;
  value: string;
  /** Degrees up to a limit, a day, or one of some words. */
  expected: { degrees: number } | { choices: readonly string[] } | 'day';
};

/** One line that names the value and what was expected. */
export function problemWords({ attribute, value, expected }: Problem, { say, any }: Speaker): string {
  if (expected === 'day') return say('element.day', { attribute, value });
  if ('degrees' in expected) return say('element.degrees', { attribute, value, limit: expected.degrees });
  return say('element.choice', { attribute, value, expected: any(expected.choices) });
}
