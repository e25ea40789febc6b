import { cultivars } from '@neckfall/data';
import type { Kind } from '@neckfall/engine';
import type { OnionLook } from '@neckfall/pictures';

let looks: ReadonlyMap<string, { [Part in keyof OnionLook]: OnionLook[Part] | null }> | null = null;

/** What to draw a kind with: the skin of the first of its names whose skin is known, and the shape they all have. */
export function lookOf({ names }: Pick<Kind, 'names'>): OnionLook {
  looks ??= new Map(cultivars.map(({ name, colour, shape }) => [name, { colour, shape }]));
  const known = names.flatMap((name) => looks?.get(name) ?? []);
  const shape = known[0]?.shape ?? 'globe';
  return {
    colour: known.find(({ colour }) => colour)?.colour ?? 'yellow',
    shape: known.length === names.length && known.every((other) => other.shape === shape) ? shape : 'globe',
  };
}
