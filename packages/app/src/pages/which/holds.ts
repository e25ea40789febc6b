import type { Choice, StartMethod } from '@neckfall/engine';
import type { Asked } from '../../address/address-form.ts';

/** Ways of starting that what is in a packet leaves open. */
const startsOf: Readonly<Record<NonNullable<Asked['holds']>, readonly StartMethod[]>> = {
  seed: ['direct-seed', 'raised-seedlings'],
  plants: ['bought-transplants'],
  sets: ['sets'],
};

/** The ways of starting an onion, those first that can be done with what is in the hand. */
export function heldFirst(choices: readonly Choice[], holds: Asked['holds']): readonly Choice[] {
  if (holds === null) return choices;
  const isHeld = ({ kind }: Choice) => startsOf[holds].includes(kind.start);
  return [...choices.filter(isHeld), ...choices.filter((choice) => !isHeld(choice))];
}
