import { fileURLToPath } from 'node:url';
import type { Gazetteer, LandMask } from '@neckfall/data';
import { loadGazetteer, loadLandMask, readClimateNodes } from '@neckfall/data/node';
import type { ClimateNodes } from '@neckfall/engine';
import { assetsFolder } from '../assets-folder.ts';
import { refuse } from '../refusal/refusal.ts';

/** The data files, read when first asked for. */
export type Assets = {
  gazetteer: () => Gazetteer;
  land: () => LandMask;
  climate: () => ClimateNodes;
};

export function openAssets(folder: URL = assetsFolder): Assets {
  return {
    gazetteer: once(() => loadGazetteer(folder)),
    land: once(() => loadLandMask(folder)),
    climate: once(() => readClimateNodes(fileURLToPath(new URL('climate.bin', folder)))),
  };
}

/** Those that come with the program. */
export const ownAssets = openAssets();

function once<Value>(load: () => Value): () => Value {
  let value: Value | undefined;
  return () => {
    try {
      value ??= load();
      return value;
    } catch (error) {
      // a fault of ours is no damage of the file
      if (error instanceof TypeError || error instanceof ReferenceError) throw error;
      const { path, code, message } = error as NodeJS.ErrnoException;
      throw refuse('data-missing', {
        exit: 3,
        values: { value: path ?? 'packages/data/assets', reason: code ?? message },
        cause: error,
      });
    }
  };
}
