import { type Grid, gridOf } from '@neckfall/engine';
import type { AtlasSettings, Shard } from './settings.ts';

/** Grid points of a tile, sea and all: about a second of work, so that little is lost when a run is killed. */
const tilePoints = 64;

/** The map cut into tiles: stretches of its grid, in its order. */
export type Tiles = { count: number; points: (tile: number) => ReturnType<Grid['at']>[] };

export function tilesOf({ box, stepDeg }: Pick<AtlasSettings, 'box' | 'stepDeg'>): Tiles {
  const grid = gridOf(box, stepDeg);
  return {
    count: Math.ceil(grid.count / tilePoints),
    points: (tile) => {
      const first = tile * tilePoints;
      const length = Math.max(0, Math.min(tilePoints, grid.count - first));
      return Array.from({ length }, (_, at) => grid.at(first + at));
    },
  };
}

/** Tiles of a shard; they lie strewn over the map, so that shards take about equally long. */
export function isOfShard(tile: number, { number, of }: Shard): boolean {
  return tile % of === number - 1;
}
