import { fetchAsset } from '../fetch/fetch-asset.ts';
import { type PublishedPractice, readPractice } from './published-practice.ts';

/** The calendars that are shipped. Throws an Error naming the file when it does not come whole. */
export async function fetchPractice(): Promise<PublishedPractice[]> {
  const bytes = await fetchAsset(new URL('../../assets/practice.json', import.meta.url));
  return readPractice(JSON.parse(new TextDecoder().decode(bytes)));
}
