import type { CalendarRow } from './calendar-rows.ts';
import { type Miss, type TimingScore, timingScore } from './timing.ts';

/** Splits misses by a property of their row, in order of appearance. */
export function byGroup(
  misses: readonly Miss[],
  groupOf: (row: CalendarRow) => string,
): [string, TimingScore][] {
  const groups = new Map<string, Miss[]>();
  for (const miss of misses) {
    const group = groupOf(miss.row);
    groups.set(group, [...(groups.get(group) ?? []), miss]);
  }
  return [...groups].map(([group, of]) => [group, timingScore(of, () => 1)]);
}

export function latitudeBand(row: CalendarRow): string {
  const band = Math.floor(Math.abs(row.latitudeDeg) / 15) * 15;
  return `${band}–${band + 15}°`;
}
