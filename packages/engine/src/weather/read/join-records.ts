import { type DailyRecord, emptyRecord, recordFields } from '../daily-record.ts';

/** Both records as one; where both know a value of a day, the later one's stands. */
export function joinRecords(earlier: DailyRecord, later: DailyRecord): DailyRecord {
  if (earlier.days === 0) return later;
  if (later.days === 0) return earlier;
  const firstDay = Math.min(earlier.firstDay, later.firstDay);
  const end = Math.max(earlier.firstDay + earlier.days, later.firstDay + later.days);
  const joined = emptyRecord(firstDay, end - firstDay);
  for (const record of [earlier, later]) {
    const offset = record.firstDay - firstDay;
    for (const field of recordFields) {
      for (let at = 0; at < record.days; at++) {
        if (record.known[field][at] !== 1) continue;
        joined[field][offset + at] = record[field][at]!;
        joined.known[field][offset + at] = 1;
      }
    }
  }
  return joined;
}
