import type { PlaceAssets } from '@neckfall/answers';
import { type AtlasPointRow, atlasPoint } from './atlas-point.ts';
import type { AtlasSettings } from './settings.ts';
import { tilesOf } from './tiles.ts';

/** A tile worked out: the points on its land, in the order of the grid. */
export type Tile = { tile: number; points: AtlasPointRow[] };

export function tileMaker(settings: AtlasSettings, assets: PlaceAssets): (tile: number) => Tile {
  const tiles = tilesOf(settings);
  return (tile) => ({
    tile,
    points: tiles.points(tile).flatMap((point) => atlasPoint(point, settings, assets) ?? []),
  });
}
