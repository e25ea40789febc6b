import { type ClimateNodes, decodeClimateNodes } from '@neckfall/engine';
import { fetchAsset } from '../fetch/fetch-asset.ts';

/**
 * The climatology that is shipped. Throws an Error naming the file when it does not come whole.
 * @param url where the asset is served; by default beside the module
 */
export async function fetchClimateNodes(
  url = new URL('../../assets/climate.bin', import.meta.url),
): Promise<ClimateNodes> {
  return decodeClimateNodes(await fetchAsset(url));
}
