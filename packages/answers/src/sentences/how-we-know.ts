import { elevationSpreadWarningM } from '@neckfall/engine';
import type { Speaker } from '@neckfall/words';
import { elevationIsUnsure } from '../place/elevation-is-unsure.ts';
import type { Place } from '../place/place.ts';

/** What an answer rests on. */
export type Grounds = {
  place: Place;
  years: number;
  seed: number;
  /** Sentences on what was taken for granted. */
  assumed: readonly string[];
};

/** What every answer stands on, in its order: climate, years tried, what was assumed, what is least sure. */
export function howWeKnowLines({ place, years, seed, assumed }: Grounds, speaker: Speaker): string[] {
  const { say, quantity } = speaker;
  return [
    say('how.climate', { distance: quantity('distance', place.climate.nearestNodeKm) }),
    say('how.years', { years, seed }),
    ...assumed,
    leastSure(place, speaker),
  ];
}

/** Short names of the sources of every answer. */
export function sourceNames({ say }: Speaker): string[] {
  return [say('source.chelsa'), say('source.cru'), say('source.geonames'), say('source.model')];
}

/** Nearer to the equator than this, days hardly change. */
const tropicsDeg = 20;

function leastSure(place: Place, { say, quantity }: Speaker): string {
  if (elevationIsUnsure(place)) {
    return say('how.sure-mountain', { spread: quantity('elevation', elevationSpreadWarningM) });
  }
  return say(Math.abs(place.latitudeDeg) < tropicsDeg ? 'how.sure-tropics' : 'how.sure');
}
