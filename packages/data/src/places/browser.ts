/**
 * The door for browsers. Each is fetched when called, from beside the module or from the URL given; all throw an Error
 * naming the file when it does not come.
 */
import { fetchAsset } from '../fetch/fetch-asset.ts';
import { type LandMask, openLandMask } from './land-mask.ts';
import { type LandOutline, readLandOutline } from './land-outline.ts';

/** Towns of at least 15,000 people, for `openGazetteer`. */
export function fetchLargeTowns(
  url = new URL('../../assets/towns-large.bin.gz', import.meta.url),
): Promise<Uint8Array> {
  return fetchAsset(url);
}

/** Towns of 1,000 to 15,000 people, for `openGazetteer` together with the large ones. */
export function fetchSmallTowns(
  url = new URL('../../assets/towns-small.bin.gz', import.meta.url),
): Promise<Uint8Array> {
  return fetchAsset(url);
}

/** The land, for `isLand`. */
export async function fetchLandMask(
  url = new URL('../../assets/land.bin.gz', import.meta.url),
): Promise<LandMask> {
  return openLandMask(await fetchAsset(url));
}

/** Coastlines to draw. */
export async function fetchLandOutline(
  url = new URL('../../assets/land-outline.txt', import.meta.url),
): Promise<LandOutline> {
  const bytes = await fetchAsset(url);
  return readLandOutline(new TextDecoder().decode(bytes));
}
