import { elevationSpreadWarningM } from '@neckfall/engine';
import type { Frame } from '../frame.ts';
import { elevationIsUnsure } from '../place/place-warnings.ts';
import { wrap } from './wrap.ts';

/** The foot of every answer: what it rests on, what was assumed, what is least sure. */
export function howWeKnow(frame: Frame): string {
  const { speaker, place, options, assumed, sources } = frame;
  const { say, quantity, all } = speaker;
  const lines = [
    say('how.climate', { distance: quantity('distance', place.climate.nearestNodeKm) }),
    say('how.years', { years: options.years, seed: options.seed }),
    ...assumed,
    leastSure(frame),
    say('how.sources', { sources: all(sources) }),
  ];
  return [say('how.title'), ...lines.map((line) => `  ${wrap(line, 2)}`)].join('\n');
}

/** Nearer to the equator than this, days hardly change. */
const tropicsDeg = 20;

function leastSure({ place, speaker }: Frame): string {
  if (elevationIsUnsure(place)) {
    return speaker.say('how.sure-mountain', {
      spread: speaker.quantity('elevation', elevationSpreadWarningM),
    });
  }
  return Math.abs(place.latitudeDeg) < tropicsDeg ? speaker.say('how.sure-tropics') : speaker.say('how.sure');
}
