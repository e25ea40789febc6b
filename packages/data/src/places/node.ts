/** The door for Node: reads the assets from a folder. Nothing else in this folder touches files. */
import { readFileSync } from 'node:fs';
import { gunzipSync } from 'node:zlib';
import { type Gazetteer, openGazetteer } from './gazetteer.ts';
import { type LandMask, openLandMask } from './land-mask.ts';
import { type LandOutline, readLandOutline } from './land-outline.ts';

/** Where the assets lie when this runs from the sources; a bundle passes its own folder. */
const SOURCE_ASSETS = new URL('../../assets/', import.meta.url);

function readAsset(folder: URL, name: string): Uint8Array {
  return gunzipSync(readFileSync(new URL(name, folder)));
}

/**
 * All towns of at least 1,000 people. The URL of the folder ends in a slash. Throws as readFileSync does when
 * it has no such assets.
 */
export function loadGazetteer(assetsFolder: URL = SOURCE_ASSETS): Gazetteer {
  return openGazetteer(
    readAsset(assetsFolder, 'towns-large.bin.gz'),
    readAsset(assetsFolder, 'towns-small.bin.gz'),
  );
}

/** The land mask, under the same conditions. */
export function loadLandMask(assetsFolder: URL = SOURCE_ASSETS): LandMask {
  return openLandMask(readAsset(assetsFolder, 'land.bin.gz'));
}

/** Coastlines, under the same conditions. */
export function loadLandOutline(assetsFolder: URL = SOURCE_ASSETS): LandOutline {
  return readLandOutline(readFileSync(new URL('land-outline.txt', assetsFolder), 'utf8'));
}
