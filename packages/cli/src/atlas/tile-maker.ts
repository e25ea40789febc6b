import type { PlaceAssets } from '@neckfall/answers';
import { type AtlasPointRow, atlasPoint } from './atlas-point.ts';
import type { AtlasSettings } from './settings.ts';
import { tilesOf } from './tiles.ts';

/** A tile worked out: the points on its land, in the order of the grid. */
export type Tile = { tile: number; points: AtlasPointRow[] };

/** @param tidy done after each point: gives back the weather of the last */
export function tileMaker(
  settings: AtlasSettings,
  assets: PlaceAssets,
  tidy: () => void,
): (tile: number) => Tile {
  const tiles = tilesOf(settings);
  return (tile) => ({
    tile,
    points: tiles.points(tile).flatMap((point) => {
      const found = atlasPoint(point, settings, assets);
      if (found) tidy();
      return found ?? [];
    }),
  });
}
