import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { gunzipSync } from 'node:zlib';
import { type ClimateNodes, decodeClimateNodes } from '@neckfall/engine';

/** The climatology that is shipped. Gzip inside; the name hides it from servers that would unzip it on the way. */
export const climateAssetPath = fileURLToPath(new URL('../../assets/climate.bin', import.meta.url));

/**
 * Loads the shipped climatology, or another one, in Node. Throws as readFileSync does when there is no such file, and
 * an Error naming the file when it is damaged.
 */
export function readClimateNodes(path: string = climateAssetPath): ClimateNodes {
  const zipped = readFileSync(path);
  try {
    return decodeClimateNodes(gunzipSync(zipped));
  } catch (error) {
    throw new Error(`${path}: ${(error as Error).message}`, { cause: error });
  }
}
