import type { CalendarRow } from './calendar-rows.ts';

/** Rows that say when a crop ends: both windows known, and an outcome that leaves bulbs to lift. */
export function timingRows(rows: readonly CalendarRow[]): CalendarRow[] {
  return rows.filter(
    (row) =>
      row.harvestWindow !== null &&
      (row.startWindow !== null || row.plantOutWindow !== null) &&
      (row.outcome === null || row.outcome === 'good' || row.outcome === 'small' || row.outcome === 'bolts'),
  );
}

/** Rows with a verdict: as stated, or good where a calendar read in full states none. */
export function verdictRows(rows: readonly CalendarRow[]): CalendarRow[] {
  return rows.filter(
    (row) =>
      (row.startWindow !== null || row.plantOutWindow !== null) &&
      (row.outcome !== null || (row.weight === 1 && row.harvestWindow !== null)),
  );
}
