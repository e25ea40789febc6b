import { fetchClimateNodes } from '@neckfall/data/browser';
import { latitudeClimates as climatesOf, type LatitudeClimates } from '@neckfall/engine';

let known: LatitudeClimates | null = null;

/**
 * The middling climate of low ground at each degree from the equator; see the engine. Asked of the engine's worker, which
 * fetches the points for it, so that the worker for places is no larger for a page that asks for no place.
 */
export async function latitudeClimates(): Promise<LatitudeClimates> {
  known ??= climatesOf(await fetchClimateNodes());
  return known;
}
