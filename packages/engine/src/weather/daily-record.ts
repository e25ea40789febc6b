import type { DayNumber } from '../calendar/index.ts';
/**
 * Measured weather of consecutive calendar days (29 February included). A value counts only where its mark in
 * `known` is 1; elsewhere the array holds 0.
 */
export type DailyRecord = {
  /** Day number of the first day. */
  firstDay: DayNumber;
  days: number;
  known: Record<RecordField, Uint8Array>;
} & Record<RecordField, Float64Array>;

/** The measured quantities, in the units of a weather series. */
export const recordFields = ['tempMinC', 'tempMaxC', 'rainMm', 'solarMJ'] as const;
/** One of {@link recordFields}. */
export type RecordField = (typeof recordFields)[number];

/** A record of that many days in which nothing is known yet. */
export function emptyRecord(firstDay: DayNumber, days: number): DailyRecord {
  const values = () => new Float64Array(days);
  const marks = () => new Uint8Array(days);
  return {
    firstDay,
    days,
    tempMinC: values(),
    tempMaxC: values(),
    rainMm: values(),
    solarMJ: values(),
    known: { tempMinC: marks(), tempMaxC: marks(), rainMm: marks(), solarMJ: marks() },
  };
}
