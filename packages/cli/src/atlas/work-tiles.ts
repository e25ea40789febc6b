import { availableParallelism } from 'node:os';
import { ownAssets } from '../place/assets.ts';
import { leastYoungMb, type Pool, threadPool } from '../threads/thread-pool.ts';
import type { GrowingPart } from './part-file.ts';
import type { AtlasSettings, Shard } from './settings.ts';
import { type Tile, tileMaker } from './tile-maker.ts';
import { isOfShard, tilesOf } from './tiles.ts';
import type { Watch } from './watch.ts';

/** Tiles under way for each hand: one worked out, one waiting. */
const tilesAhead = 2;

/** Works out the tiles of a shard that the part does not hold yet, and adds each as soon as it is known. */
export async function workTiles(
  settings: AtlasSettings,
  shard: Shard,
  part: GrowingPart,
  watch: Watch,
): Promise<void> {
  const tiles = Array.from({ length: tilesOf(settings).count }, (_, tile) => tile).filter((tile) =>
    isOfShard(tile, shard),
  );
  const toDo = tiles.filter((tile) => !part.has(tile));
  watch.begin(tiles.length, tiles.length - toDo.length);
  const crew = crewFor(settings);
  try {
    let next = 0;
    const hand = async () => {
      while (next < toDo.length) {
        const tile = await crew.answer(toDo[next++]);
        part.add(tile);
        watch.add(tile.points.length);
      }
    };
    await Promise.all(Array.from({ length: crew.hands * tilesAhead }, hand));
  } finally {
    watch.end();
    await crew.dismiss();
  }
}

/**
 * MB that all threads together fill before they tidy up. A point makes some 10 MB to be dropped: with 4 MB a thread a
 * third of the time went into tidying.
 */
const youngMbOfAll = 64;

/** Threads run the bundled program; run from its sources, the work is done here. */
function crewFor(settings: AtlasSettings): Pool<number, Tile> {
  const program = new URL(import.meta.url);
  if (program.pathname.endsWith('.mjs')) {
    const hands = availableParallelism();
    const youngMb = Math.max(leastYoungMb, Math.floor(youngMbOfAll / hands));
    return threadPool({ tiles: settings }, program, hands, youngMb);
  }
  const make = tileMaker(settings, ownAssets);
  return { hands: 1, answer: async (tile) => make(tile), dismiss: async () => {} };
}
