import { latitudeClimates as climatesOf, type LatitudeClimates } from '@neckfall/engine';
import { climateNodes } from './assets.ts';

let known: LatitudeClimates | null = null;

/** The middling climate of low ground at each degree from the equator; see the engine. */
export async function latitudeClimates(): Promise<LatitudeClimates> {
  known ??= climatesOf(await climateNodes());
  return known;
}
