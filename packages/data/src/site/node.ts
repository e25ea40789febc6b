import { fileURLToPath } from 'node:url';
import { readClimateNodes } from '../climate/index.ts';
import { loadGazetteer, loadLandMask } from '../places/node.ts';
import { publishedPractice } from '../practice/node.ts';
import type { SiteAssets } from './site-at.ts';

/**
 * The data files in Node, each read when it is first needed and then kept: about 2 MB, 0.1 s.
 * @param folder URL ending in a slash; by default the package's own assets. Calendars of growers are the package's own
 * @throws (when one is first needed) as readFileSync does, or an Error naming the file, where it is missing or damaged
 */
export function readSiteAssets(folder: URL = new URL('../../assets/', import.meta.url)): SiteAssets {
  return {
    gazetteer: once(() => loadGazetteer(folder)),
    land: once(() => loadLandMask(folder)),
    climate: once(() => readClimateNodes(fileURLToPath(new URL('climate.bin', folder)))),
    practice: () => publishedPractice,
  };
}

function once<Value>(load: () => Value): () => Value {
  let value: Value | undefined;
  return () => {
    value ??= load();
    return value;
  };
}
