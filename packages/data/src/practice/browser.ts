import { fetchAsset } from '../fetch/fetch-asset.ts';
import { type PublishedPractice, readPractice } from './published-practice.ts';

/**
 * The calendars that are shipped. Throws an Error naming the file when it does not come whole.
 * @param url where the asset is served; by default beside the module
 */
export async function fetchPractice(
  url = new URL('../../assets/practice.json', import.meta.url),
): Promise<PublishedPractice[]> {
  const bytes = await fetchAsset(url);
  return readPractice(JSON.parse(new TextDecoder().decode(bytes)));
}
