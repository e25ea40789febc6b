import { dayNumber } from '@neckfall/engine';
import { computed, type ReadonlySignal, signal } from '@preact/signals';
import { asked } from './route.ts';

const machineDay = signal(machineToday());

/** Today as a day number: the machine's, unless the link names one. */
export const today: ReadonlySignal<number> = computed(() => asked.value.today ?? machineDay.value);

function machineToday(now = new Date()): number {
  return dayNumber(now.getFullYear(), now.getMonth() + 1, now.getDate());
}

/** A page left open overnight tells the new day when it is looked at again. */
export function followToday(): void {
  addEventListener('visibilitychange', () => {
    machineDay.value = machineToday();
  });
}
