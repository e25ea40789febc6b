import { type ClimateNodes, decodeClimateNodes } from '@neckfall/engine';
import { fetchAsset } from '../fetch/fetch-asset.ts';

/** The climatology that is shipped. Throws an Error naming the file when it does not come whole. */
export async function fetchClimateNodes(): Promise<ClimateNodes> {
  return decodeClimateNodes(await fetchAsset(new URL('../../assets/climate.bin', import.meta.url)));
}
