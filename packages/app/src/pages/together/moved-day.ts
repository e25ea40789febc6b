import { computed, signal } from '@preact/signals';
import { asked, go, page } from '../../state/route.ts';
import { readOn, writeOn } from './together-address.ts';

/** The address follows once the hand rests: browsers refuse one that changes with every pixel. */
const restMs = 250;

const moving = signal<number | null>(null);
let rest: ReturnType<typeof setTimeout> | undefined;

/** The day the address names, a day number; null where it names none. */
export const restingDay = computed(() => readOn(asked.value.on));

/** The day that is looked at, as it is being moved. */
export const movedDay = computed(() => moving.value ?? restingDay.value);

/** Moves it, and has the address follow. */
export function moveTo(day: number): void {
  moving.value = day;
  clearTimeout(rest);
  rest = setTimeout(() => {
    if (page.value === 'together') go({ on: writeOn(day) }, { replace: true });
    moving.value = null;
  }, restMs);
}
