import type { RecordField } from './daily-record.ts';

/** The limits of a believable value of a day, just beyond the world's records (memory). */
export const believable: Readonly<Record<RecordField, { low: number; high: number }>> = {
  tempMinC: { low: -95, high: 60 },
  tempMaxC: { low: -95, high: 60 },
  rainMm: { low: 0, high: 2000 },
  solarMJ: { low: 0, high: 50 },
};
