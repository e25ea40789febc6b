import { workerData } from 'node:worker_threads';
import { ownAssets } from '../place/assets.ts';
import { serveThread } from '../threads/serve-thread.ts';
import type { AtlasSettings } from './settings.ts';
import { tileMaker } from './tile-maker.ts';

/** A thread of a map: works out tiles by their numbers. */
export function serveTiles(): void {
  const { tiles } = workerData as { tiles: AtlasSettings };
  serveThread(tileMaker(tiles, ownAssets), () => {});
}
