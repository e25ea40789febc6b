/** The door for Node: reads the assets from a folder. Nothing else in this folder touches files. */
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { gunzipSync } from 'node:zlib';
import { type Gazetteer, openGazetteer } from './gazetteer.ts';
import { type LandMask, openLandMask } from './land-mask.ts';

/** Where the assets lie when this runs from the sources; a bundle passes its own folder. */
const SOURCE_ASSETS = new URL('../../assets/', import.meta.url);

function readAsset(folder: URL | string, name: string): Uint8Array {
  const path = folder instanceof URL ? fileURLToPath(new URL(name, folder)) : `${folder}/${name}`;
  return gunzipSync(readFileSync(path));
}

/** All towns of at least 1,000 people. Throws as readFileSync does when the folder has no such assets. */
export function loadGazetteer(assetsFolder: URL | string = SOURCE_ASSETS): Gazetteer {
  return openGazetteer(
    readAsset(assetsFolder, 'towns-large.bin.gz'),
    readAsset(assetsFolder, 'towns-small.bin.gz'),
  );
}

export function loadLandMask(assetsFolder: URL | string = SOURCE_ASSETS): LandMask {
  return openLandMask(readAsset(assetsFolder, 'land.bin.gz'));
}
