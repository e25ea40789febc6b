import type { DayNumber } from '@neckfall/engine';
import { dayNumber } from '@neckfall/engine';

const minutesPerDay = 1440;

/** Minutes since 1 January 2020: what a later calendar has more of. */
export function sequenceOf(today: DayNumber, minuteOfDay = 0): number {
  return (today - dayNumber(2020, 1, 1)) * minutesPerDay + minuteOfDay;
}

/**
 * A calendar that takes the place of one written earlier. It is that one, byte for byte, where nothing else changed;
 * where it tells of the same events, its number is beyond theirs, however late they were written.
 *
 * @param make the calendar by its number
 */
export function renewed(before: string | null, sequence: number, make: (sequence: number) => string): string {
  const made = make(sequence);
  if (before === null) return made;
  if (unnumbered(before) === unnumbered(made)) return before;
  const told = new Set(valuesOf(made, 'UID'));
  if (!valuesOf(before, 'UID').some((uid) => told.has(uid))) return made;
  const highest = Math.max(...valuesOf(before, 'SEQUENCE').map(Number), 0);
  return highest < sequence ? made : make(highest + 1);
}

const unfolded = (text: string) => text.replace(/\r?\n[ \t]/g, '');

function valuesOf(text: string, property: string): string[] {
  return [...unfolded(text).matchAll(new RegExp(`^${property}:(.*?)\\r?$`, 'gm'))].map(([, value]) => value);
}

/** Without the number and the day of writing. */
function unnumbered(text: string): string {
  return unfolded(text).replace(/^(SEQUENCE|DTSTAMP):.*$/gm, '');
}
