import { bedTrials } from './bed-trials.ts';
import { kindTrials } from './kind-trials.ts';
import { setTrials } from './set-trials.ts';
import { startTrials } from './start-trials.ts';
import { storeTrials } from './store-trials.ts';
import type { CauseTrial, Saying } from './trials.ts';
import { weatherTrials } from './weather-trials.ts';

/** Every cause that lies in a season as told, or may have been there unsaid, with how it is tried. */
export function runTrials(saying: Saying, isStoreSaid: boolean): CauseTrial[] {
  const { trial } = saying;
  return [
    ...kindTrials(saying),
    ...startTrials(saying),
    ...setTrials(saying),
    ...weatherTrials(trial),
    ...bedTrials(saying),
    ...storeTrials(trial, isStoreSaid),
  ];
}
