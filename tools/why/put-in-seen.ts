import {
  type Plan,
  type SeenCause,
  type Symptom,
  seenCauses,
  storeClimateOf,
  symptomTimes,
} from '../../packages/engine/src/index.ts';
import type { StudyPlace } from './places.ts';
import { goodStore, type Spoilt, spoiltCrop } from './spoilt.ts';

/** Causes of seed that sets have not. */
const ofSeed: ReadonlySet<SeenCause> = new Set(['old-seed', 'dry-seedbed', 'damping-off'] as const);

/** Causes that no run knows, put in by what they show; those of stores in a store that is good otherwise. */
export function putInSeen(place: StudyPlace, sound: Plan): Spoilt[] {
  const store = goodStore(storeClimateOf(place.climate, 'shed'));
  const inStore = { site: place.lived, plan: sound, store };
  return (Object.keys(seenCauses) as SeenCause[])
    .filter((cause) => sound.start !== 'sets' || !ofSeed.has(cause))
    .map((cause) => {
      const { shows } = seenCauses[cause];
      const kept = { lived: inStore, sound: inStore, store: store.air, keepsMonths: store.keepsMonths };
      return spoiltCrop(place, sound, cause, sound, { shows, ...(isOfStore(shows) ? kept : {}) });
    });
}

/** Whether what it shows most is seen in store. */
function isOfStore(shows: Partial<Record<Symptom, number>>): boolean {
  const [most] = (Object.entries(shows) as [Symptom, number][]).sort((a, b) => b[1] - a[1])[0];
  return symptomTimes[most] === 'store';
}
