import type { Speaker } from '@neckfall/words';
import type { Refusal } from './refusal.ts';

/** A refusal as one line for people. */
export function refusalLine(refusal: Refusal, { say, any }: Speaker): string {
  return say(`error.${refusal.code}`, {
    field: refusal.field ?? '',
    expected: refusal.expected ?? '',
    near: refusal.nearest.length,
    nearest: any(refusal.nearest),
    unit: 'none',
    ...refusal.values,
  });
}
