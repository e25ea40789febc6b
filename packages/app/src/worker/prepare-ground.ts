import { findTowns } from '@neckfall/data';
import { climateNodes, largeTowns, publishedPractice } from './assets.ts';
import { locate } from './locate.ts';

/**
 * Fetches what every first answer needs while the reader is still typing, and finds some town, so that the one asked
 * for is found by warm code.
 */
export async function prepareGround(): Promise<true> {
  const [towns] = await Promise.all([largeTowns(), climateNodes(), publishedPractice()]);
  const [some] = findTowns(towns, 'a', 1).towns;
  if (some) await locate({ ...some, elevationM: null });
  return true;
}
