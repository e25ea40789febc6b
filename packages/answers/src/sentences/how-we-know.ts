import { elevationSpreadWarningM, type Pull } from '@neckfall/engine';
import type { Speaker } from '@neckfall/words';
import { elevationIsUnsure, type Place } from '../place/index.ts';
import { whatItHangsOn } from './what-it-hangs-on.ts';

/** What an answer rests on. */
export type Grounds = {
  place: Place;
  years: number;
  seed: number;
  /** Sentences on what was taken for granted. */
  assumed: readonly string[];
  /** How far this answer's own dates and sizes lie apart, in a sentence; null or left out where nothing is to be told. */
  span?: string | null;
  /** What moves the crop in question most; null or left out where there is none. */
  pulls?: readonly Pull[] | null;
};

/**
 * What every answer stands on, in its order: climate, years tried and what they cannot know, what was assumed, what is
 * least sure, how far years lie apart, what the crop hangs on.
 */
export function howWeKnowLines(
  { place, years, seed, assumed, span = null, pulls = null }: Grounds,
  speaker: Speaker,
): string[] {
  const { say, quantity } = speaker;
  return [
    say('how.climate', { distance: quantity('distance', place.climate.nearestNodeKm) }),
    `${say('how.years', { years, seed })} ${say('how.past')}`,
    ...assumed,
    leastSure(place, speaker),
    ...(span === null ? [] : [span]),
    ...(pulls ? [whatItHangsOn(pulls, speaker)] : []),
  ];
}

/** Short names of the sources of every answer; where the crop model is explained differs by who asks. */
export function sourceNames(
  { say }: Speaker,
  model: 'source.model' | 'app.source.model' = 'source.model',
): string[] {
  return [say('source.chelsa'), say('source.cru'), say('source.geonames'), say(model)];
}

/** Nearer to the equator than this, days hardly change. */
const tropicsDeg = 20;

function leastSure(place: Place, { say, quantity }: Speaker): string {
  if (elevationIsUnsure(place)) {
    return say('how.sure-mountain', { spread: quantity('elevation', elevationSpreadWarningM) });
  }
  return say(Math.abs(place.latitudeDeg) < tropicsDeg ? 'how.sure-tropics' : 'how.sure');
}
