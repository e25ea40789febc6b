import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { gunzipSync } from 'node:zlib';
import { type ClimateNodes, decodeClimateNodes } from '../../../engine/src/climate/index.ts';

/** The climatology that is shipped (gzip inside, whatever its name). */
export const climateAssetPath = fileURLToPath(new URL('../../assets/climate.bin', import.meta.url));

/** Loads the shipped climatology, or another one, in Node. Throws an Error that names the file and what is wrong with it. */
export function readClimateNodes(path: string = climateAssetPath): ClimateNodes {
  let bytes: Uint8Array;
  try {
    bytes = readFileSync(path);
  } catch (error) {
    throw new Error(
      `climate file ${path}: cannot be read (${(error as NodeJS.ErrnoException).code}); build it with tools/climate/build.ts`,
    );
  }
  try {
    return decodeClimateNodes(gunzipSync(bytes));
  } catch (error) {
    throw new Error(`climate file ${path}: ${(error as Error).message}`);
  }
}
