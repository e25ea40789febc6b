import { type StartMethod, startMethods, startWays } from '@neckfall/engine';
import { computed, type ReadonlySignal } from '@preact/signals';
import { asked } from './route.ts';

/** Ways of starting that what is in the hand leaves open; none where nothing is said to be. */
export const startsHeld: ReadonlySignal<readonly StartMethod[]> = computed(() =>
  startMethods.filter((start) => startWays[start].from === asked.value.holds),
);
