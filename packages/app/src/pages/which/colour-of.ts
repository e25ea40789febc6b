import { type Colour, findCultivar } from '@neckfall/data';
import type { Kind } from '@neckfall/engine';

/** Skin to draw a kind with: of the first of its names whose skin is known. */
export function colourOf({ names }: Kind): Colour {
  for (const name of names) {
    const colour = findCultivar(name).match?.colour;
    if (colour) return colour;
  }
  return 'yellow';
}
