import { dayNumber } from '@neckfall/engine';
import { computed, type ReadonlySignal, signal } from '@preact/signals';
import { asked } from './route.ts';

const machineDay = signal(machineToday());

/** Today as a day number: the machine's, unless the link names one. */
export const today: ReadonlySignal<number> = computed(() => asked.value.today ?? machineDay.value);

/** The machine's, whatever a link names. */
export function machineToday(now = new Date()): number {
  return dayNumber(now.getFullYear(), now.getMonth() + 1, now.getDate());
}

/** A page left open tells the new day at midnight, or when it is looked at again after the machine slept. */
export function followToday(): void {
  const look = () => {
    machineDay.value = machineToday();
  };
  addEventListener('visibilitychange', look);
  const waitForMidnight = () => {
    const now = new Date();
    const midnight = new Date(now.getFullYear(), now.getMonth(), now.getDate() + 1);
    setTimeout(() => {
      look();
      waitForMidnight();
    }, midnight.getTime() - now.getTime());
  };
  waitForMidnight();
}
