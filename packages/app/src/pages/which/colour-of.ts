import { type Colour, cultivars } from '@neckfall/data';
import type { Kind } from '@neckfall/engine';

let colours: ReadonlyMap<string, Colour | null> | null = null;

/** Skin to draw a kind with: of the first of its names whose skin is known. */
export function colourOf({ names }: Pick<Kind, 'names'>): Colour {
  colours ??= new Map(cultivars.map(({ name, colour }) => [name, colour]));
  for (const name of names) {
    const colour = colours.get(name);
    if (colour) return colour;
  }
  return 'yellow';
}
