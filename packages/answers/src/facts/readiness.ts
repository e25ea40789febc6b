import type { DayNumber, DayRow } from '@neckfall/engine';

/**
 * The day from which days are long enough, null where they were so from the start or never are; and the first day on
 * which bulbing gains, which takes long days, a plant big enough and warmth together.
 */
export function readiness(
  rows: readonly DayRow[],
  criticalPhotoperiodH: number,
): { long: DayNumber | null; big: DayNumber | null } {
  const gains = rows.findIndex(({ bulbing }) => bulbing > 0);
  const isLong = (i: number) => rows[i].photoperiodH > criticalPhotoperiodH;
  let from = gains >= 0 ? gains : rows.findIndex((_, i) => isLong(i));
  if (from < 0) return { long: null, big: null };
  while (from > 0 && isLong(from - 1)) from--;
  return { long: from === 0 ? null : rows[from].day, big: gains >= 0 ? rows[gains].day : null };
}
