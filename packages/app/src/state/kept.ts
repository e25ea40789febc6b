import { keepingOf } from '@neckfall/answers';
import { computed, type ReadonlySignal } from '@preact/signals';
import type { SeasonAheadAsked } from '../worker/season-ahead.ts';
import { ownOnions } from './garden.ts';
import { household } from './kitchen.ts';
import { asked } from './route.ts';

/** How long the onion that the address names keeps as a rule, and where its household stores onions. */
export const kept: ReadonlySignal<Pick<SeasonAheadAsked, 'keepsMonths' | 'store'>> = computed(() => ({
  keepsMonths: keepingOf(ownOnions.value, asked.value),
  store: household.value.store,
}));
