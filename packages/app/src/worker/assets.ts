import { type Gazetteer, type LandMask, openGazetteer, type PublishedPractice } from '@neckfall/data';
import {
  fetchClimateNodes,
  fetchLandMask,
  fetchLargeTowns,
  fetchPractice,
  fetchSmallTowns,
} from '@neckfall/data/browser';
import type { ClimateNodes } from '@neckfall/engine';

/** The data files, fetched when first asked for; a failed fetch is tried again at the next asking. */
export const climateNodes: () => Promise<ClimateNodes> = once(fetchClimateNodes);
export const publishedPractice: () => Promise<PublishedPractice[]> = once(fetchPractice);
export const landMask: () => Promise<LandMask> = once(fetchLandMask);
export const largeTowns: () => Promise<Gazetteer> = once(async () => openGazetteer(await large()));
/** All towns; the small ones are as many bytes as all else together. */
export const allTowns: () => Promise<Gazetteer> = once(async () => {
  const assets = await Promise.all([large(), fetchSmallTowns()]);
  const towns = openGazetteer(...assets);
  isComplete = true;
  return towns;
});

let isComplete = false;

/** Whether small towns are at hand. */
export const hasSmallTowns = (): boolean => isComplete;

const large = once(fetchLargeTowns);

function once<Value>(load: () => Promise<Value>): () => Promise<Value> {
  let loading: Promise<Value> | null = null;
  return () => {
    loading ??= load().catch((error) => {
      loading = null;
      throw error;
    });
    return loading;
  };
}
