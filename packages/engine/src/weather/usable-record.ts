import { type DailyRecord, emptyRecord, recordFields } from './daily-record.ts';

/** The record without days whose minimum is above their maximum: one of the two is wrong, and which is not known. */
export function usableRecord(record: DailyRecord): DailyRecord {
  const usable = { ...record, known: { ...record.known } };
  for (const field of ['tempMinC', 'tempMaxC'] as const) {
    usable[field] = record[field].slice();
    usable.known[field] = record.known[field].slice();
  }
  for (let at = 0; at < record.days; at++) {
    const { known } = record;
    if (known.tempMinC[at] !== 1 || known.tempMaxC[at] !== 1) continue;
    if (record.tempMinC[at]! <= record.tempMaxC[at]!) continue;
    for (const field of ['tempMinC', 'tempMaxC'] as const) {
      usable[field][at] = 0;
      usable.known[field][at] = 0;
    }
  }
  return usable;
}

/** Days from `from` to before `end`; what lies outside the record is unknown. */
export function cutRecord(record: DailyRecord, from: number, end: number): DailyRecord {
  const first = Math.max(from, record.firstDay);
  const last = Math.min(end, record.firstDay + record.days);
  if (!(first < last)) return emptyRecord(record.firstDay, 0);
  const days = last - first;
  const offset = first - record.firstDay;
  const cut = { ...record, firstDay: first, days, known: { ...record.known } };
  for (const field of recordFields) {
    cut[field] = record[field].slice(offset, offset + days);
    cut.known[field] = record.known[field].slice(offset, offset + days);
  }
  return cut;
}
