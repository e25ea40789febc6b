import { refuse } from '../refusal/refusal.ts';
import { openPart, type Part } from './part-file.ts';
import { tilesOf } from './tiles.ts';

/** The parts of one map as one, each tile taken from the first that has it. @throws Refusal where they are no whole map */
export function joinParts(paths: readonly string[]): Part {
  const parts = paths.map((path) => openPart(path));
  const [first] = parts;
  const other = parts.findIndex(
    ({ settings }) => JSON.stringify(settings) !== JSON.stringify(first.settings),
  );
  if (other > 0)
    throw refuse('map-parts-differ', { values: { value: paths[other], first: paths[0] }, exit: 3 });
  const { count } = tilesOf(first.settings);
  const holder = (tile: number) => parts.find((part) => part.has(tile));
  const missing = Array.from({ length: count }, (_, tile) => tile).filter((tile) => !holder(tile));
  if (missing.length > 0) {
    throw refuse('map-parts-missing', {
      values: { missing: missing.length, tiles: count, first: missing[0] + 1 },
      exit: 3,
    });
  }
  return {
    settings: first.settings,
    has: () => true,
    count: () => count,
    read: (tile) => holder(tile)!.read(tile),
    close: () => parts.forEach((part) => void part.close()),
  };
}
