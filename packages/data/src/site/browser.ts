import { fetchClimateNodes } from '../climate/browser.ts';
import { fetchLandMask, fetchLargeTowns, fetchSmallTowns } from '../places/browser.ts';
import { openGazetteer } from '../places/index.ts';
import { fetchPractice } from '../practice/browser.ts';
import type { SiteAssets } from './site-at.ts';

/**
 * Fetches the data files in a browser, all at once: 2.3 MB. The same files are read from its cache later on.
 * @param folder URL ending in a slash, where the package's assets are served; by default where the bundler put them,
 * beside the module. A bundler that leaves `new URL(…, import.meta.url)` alone needs it said
 * @throws Error naming the file that does not come whole
 */
export async function fetchSiteAssets(folder?: URL): Promise<SiteAssets> {
  const at = (name: string) => folder && new URL(name, folder);
  const [climate, land, large, small, practice] = await Promise.all([
    fetchClimateNodes(at('climate.bin')),
    fetchLandMask(at('land.bin.gz')),
    fetchLargeTowns(at('towns-large.bin.gz')),
    fetchSmallTowns(at('towns-small.bin.gz')),
    fetchPractice(at('practice.json')),
  ]);
  const gazetteer = openGazetteer(large, small);
  return { climate: () => climate, land: () => land, gazetteer: () => gazetteer, practice: () => practice };
}
