import { type Choice, startWays } from '@neckfall/engine';
import type { Asked } from '../../address/address-form.ts';

/** The ways of starting an onion, those first that can be done with what is in the hand. */
export function heldFirst(choices: readonly Choice[], holds: Asked['holds']): readonly Choice[] {
  if (holds === null) return choices;
  const isHeld = ({ kind }: Choice) => startWays[kind.start].from === holds;
  return [...choices.filter(isHeld), ...choices.filter((choice) => !isHeld(choice))];
}
