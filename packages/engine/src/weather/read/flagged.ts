import type { DayNumber } from '../../calendar/index.ts';
import { believable } from '../believable.ts';
import { type DailyRecord, type RecordField, recordFields } from '../daily-record.ts';
import { stuckRuns } from '../stuck-runs.ts';
import type { FlaggedValue } from './found.ts';

/** Values that were left out or are doubtful: the first hundred, and how many there are. */
export type Flags = { flagged: FlaggedValue[]; flaggedCount: number };

export const noFlags = (): Flags => ({ flagged: [], flaggedCount: 0 });

const namedValues = 100;

export function flag(
  flags: Flags,
  day: DayNumber,
  field: RecordField,
  value: number,
  why: FlaggedValue['why'],
  leftOut: boolean,
): void {
  flags.flaggedCount++;
  if (flags.flagged.length < namedValues) flags.flagged.push({ day, field, value, why, leftOut });
}

/** So far a value must stand from those of both days beside it, to the same side, to be doubtful, °C (ours). */
const outlierC = 15;
/** And so many times the usual such distance, as winters swing more inland than at the sea. */
const outlierTimes = 4;

/** Takes out of the days what can't be, and flags it, and flags what is doubtful. */
export function checkDays(record: DailyRecord, flags: Flags): void {
  for (const field of recordFields) {
    const { low, high } = believable[field];
    for (let at = 0; at < record.days; at++) {
      const value = record[field][at]!;
      if (record.known[field][at] === 1 && !(value >= low && value <= high)) {
        leaveOut(record, flags, field, at, 'out-of-range');
      }
    }
  }
  for (let at = 0; at < record.days; at++) {
    const hasBoth = record.known.tempMinC[at] === 1 && record.known.tempMaxC[at] === 1;
    if (!hasBoth || record.tempMinC[at]! <= record.tempMaxC[at]!) continue;
    // which of the two is wrong is not known: they stand as they are, and whoever plans with them leaves out both
    flag(flags, record.firstDay + at, 'tempMinC', record.tempMinC[at]!, 'min-above-max', false);
  }
  flagOutliers(record, flags, 'tempMinC');
  flagOutliers(record, flags, 'tempMaxC');
  flagStuck(record, flags);
}

function leaveOut(
  record: DailyRecord,
  flags: Flags,
  field: RecordField,
  at: number,
  why: FlaggedValue['why'],
): void {
  flag(flags, record.firstDay + at, field, record[field][at]!, why, true);
  record[field][at] = 0;
  record.known[field][at] = 0;
}

/** Distance of a value from the nearer of those beside it; 0 where it lies between them. */
function spike(values: Float64Array, known: Uint8Array, at: number): number {
  if (known[at - 1] !== 1 || known[at] !== 1 || known[at + 1] !== 1) return 0;
  const before = values[at]! - values[at - 1]!;
  const after = values[at]! - values[at + 1]!;
  return before * after > 0 ? Math.min(Math.abs(before), Math.abs(after)) : 0;
}

function flagOutliers(record: DailyRecord, flags: Flags, field: 'tempMinC' | 'tempMaxC'): void {
  const values = record[field];
  const known = record.known[field];
  let sum = 0;
  let count = 0;
  for (let at = 1; at + 1 < record.days; at++) {
    if (known[at] !== 1) continue;
    sum += spike(values, known, at);
    count++;
  }
  for (let at = 1; at + 1 < record.days; at++) {
    const own = spike(values, known, at);
    // of the others: one far value among few must not hide itself
    const usual = (sum - own) / Math.max(1, count - 1);
    if (own > Math.max(outlierC, outlierTimes * usual)) {
      flag(flags, record.firstDay + at, field, values[at]!, 'outlier', false);
    }
  }
}

function flagStuck(record: DailyRecord, flags: Flags): void {
  const { firstDay, tempMaxC } = record;
  for (const { at, days } of stuckRuns(record)) {
    for (let day = at; day < at + days; day++)
      flag(flags, firstDay + day, 'tempMaxC', tempMaxC[day]!, 'stuck', false);
  }
}
