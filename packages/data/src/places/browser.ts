/** The door for browsers. Each is fetched when called; all throw an Error naming the file when it does not come. */
import { fetchAsset } from '../fetch/fetch-asset.ts';
import { type LandMask, openLandMask } from './land-mask.ts';
import { type LandOutline, readLandOutline } from './land-outline.ts';

/** Towns of at least 15,000 people, for {@link openGazetteer}. */
export function fetchLargeTowns(): Promise<Uint8Array> {
  return fetchAsset(new URL('../../assets/towns-large.bin.gz', import.meta.url));
}

/** Towns of 1,000 to 15,000 people, for {@link openGazetteer} together with the large ones. */
export function fetchSmallTowns(): Promise<Uint8Array> {
  return fetchAsset(new URL('../../assets/towns-small.bin.gz', import.meta.url));
}

export async function fetchLandMask(): Promise<LandMask> {
  return openLandMask(await fetchAsset(new URL('../../assets/land.bin.gz', import.meta.url)));
}

/** Coastlines to draw. */
export async function fetchLandOutline(): Promise<LandOutline> {
  const bytes = await fetchAsset(new URL('../../assets/land-outline.txt', import.meta.url));
  return readLandOutline(new TextDecoder().decode(bytes));
}
