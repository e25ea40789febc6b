import type { DayNumber } from '../calendar/index.ts';
import type { DailyRecord } from './daily-record.ts';

/** Days of a record, the first and the last of them included, without both temperatures. */
export type RecordGap = { from: DayNumber; to: DayNumber };

/** Where a record has holes: made-up weather goes there. */
export function recordGaps({ firstDay, days, known }: DailyRecord): RecordGap[] {
  const gaps: RecordGap[] = [];
  for (let at = 0; at < days; at++) {
    if (known.tempMinC[at] === 1 && known.tempMaxC[at] === 1) continue;
    const last = gaps.at(-1);
    if (last?.to === firstDay + at - 1) last.to++;
    else gaps.push({ from: firstDay + at, to: firstDay + at });
  }
  return gaps;
}
