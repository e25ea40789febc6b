import type { AtlasPointRow } from './atlas-point.ts';
import type { Part } from './part-file.ts';

/** The points of a whole map in the order of its grid, tile by tile: no more than one is held. */
export function* rowsOfPart(part: Part): Generator<AtlasPointRow[]> {
  for (let tile = 0; tile < part.count(); tile++) yield part.read(tile).points;
}
