import type { DayNumber } from '../../calendar/index.ts';
import { type DailyRecord, type RecordField, recordFields } from '../daily-record.ts';

/** Two values of one day and field. */
export type Difference = { day: DayNumber; field: RecordField; earlier: number; later: number };

/** Where two records know the same. */
export type Overlap = {
  /** Days of which both know some field. */
  days: number;
  /** Days on which they say otherwise. */
  differing: number;
  /** By field; 0 where they agree. */
  largest: Record<RecordField, number>;
  /** The first few days that differ. */
  examples: Difference[];
};

/** Values so near are one, rounded otherwise: °C, mm and MJ m⁻². */
const agreesWithin = 0.05;
const rounding = 1e-6;
const mostExamples = 5;

/** The days that both records have, and how far they say the same. */
export function overlapOf(earlier: DailyRecord, later: DailyRecord): Overlap {
  const overlap: Overlap = {
    days: 0,
    differing: 0,
    largest: { tempMinC: 0, tempMaxC: 0, rainMm: 0, solarMJ: 0 },
    examples: [],
  };
  const from = Math.max(earlier.firstDay, later.firstDay);
  const end = Math.min(earlier.firstDay + earlier.days, later.firstDay + later.days);
  for (let day = from; day < end; day++) {
    let isBoth = false;
    let differs = false;
    for (const field of recordFields) {
      const before = day - earlier.firstDay;
      const after = day - later.firstDay;
      if (earlier.known[field][before] !== 1 || later.known[field][after] !== 1) continue;
      isBoth = true;
      const [a, b] = [earlier[field][before]!, later[field][after]!];
      if (Math.abs(a - b) <= agreesWithin + rounding) continue;
      overlap.largest[field] = Math.max(overlap.largest[field], Math.abs(a - b));
      if (!differs && overlap.examples.length < mostExamples)
        overlap.examples.push({ day, field, earlier: a, later: b });
      differs = true;
    }
    if (isBoth) overlap.days++;
    if (differs) overlap.differing++;
  }
  return overlap;
}
