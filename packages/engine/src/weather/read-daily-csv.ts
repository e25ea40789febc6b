import { type DayNumber, parseDay } from '../calendar/index.ts';
import { type DailyRecord, emptyRecord, type RecordField } from './daily-record.ts';

/** What is wrong with a daily weather file, where, and what was expected there. */
export type DailyCsvIssue = {
  code:
    | 'no-rows'
    | 'unknown-column'
    | 'missing-column'
    | 'repeated-column'
    | 'wrong-cell-count'
    | 'bad-date'
    | 'repeated-date'
    | 'bad-number'
    | 'out-of-range'
    | 'min-above-max';
  /** Line of the file, 1 for the first. */
  line: number;
  /** Column name as the file has it; empty where the issue is with the whole line. */
  field: string;
  received: string;
  expected: string;
};

export type DailyCsvResult = { ok: true; record: DailyRecord } | { ok: false; issues: DailyCsvIssue[] };

/** Column → series field and the limits of a believable value, just beyond the world's records (memory). */
const columns: Record<string, { field: RecordField; low: number; high: number }> = {
  temp_min_c: { field: 'tempMinC', low: -95, high: 60 },
  temp_max_c: { field: 'tempMaxC', low: -95, high: 60 },
  rain_mm: { field: 'rainMm', low: 0, high: 2000 },
  solar_mj_m2: { field: 'solarMJ', low: 0, high: 50 },
};
const neededColumns = ['date', 'temp_min_c', 'temp_max_c'];
const allColumns = ['date', ...Object.keys(columns)];
/** Years a record may cover; also keeps a mistyped year from asking for endless memory. */
const firstYear = 1700;
const lastYear = 2200;

type Row = { day: DayNumber; values: Map<RecordField, number> };

/**
 * Reads a daily weather file: comma-separated text with a header naming `date` (YYYY-MM-DD), `temp_min_c`,
 * `temp_max_c` and, if at hand, `rain_mm` and `solar_mj_m2`, columns and days in any order. An empty cell is an
 * unknown value; absent days are unknown. Any issue refuses the file; all are returned.
 */
export function readDailyCsv(text: string): DailyCsvResult {
  const lines = text.replace(/^\uFEFF/, '').split(/\r\n|\n|\r/);
  const issues: DailyCsvIssue[] = [];
  const header = lines[0]!.split(',').map((name) => name.trim());
  checkHeader(header, issues);
  if (issues.length > 0) return { ok: false, issues };

  const rows: Row[] = [];
  const lineOfDay = new Map<number, number>();
  for (let at = 1; at < lines.length; at++) {
    if (lines[at]!.trim() === '') continue;
    const line = at + 1;
    const cells = lines[at]!.split(',').map((cell) => cell.trim());
    if (cells.length !== header.length) {
      const expected = `${header.length} cells, as in the header`;
      issues.push({ code: 'wrong-cell-count', line, field: '', received: `${cells.length} cells`, expected });
      continue;
    }
    const row = readRow(header, cells, line, issues);
    if (row === null) continue;
    const before = lineOfDay.get(row.day);
    if (before !== undefined) {
      const received = cells[header.indexOf('date')]!;
      const expected = `each date once; line ${before} has it already`;
      issues.push({ code: 'repeated-date', line, field: 'date', received, expected });
    }
    lineOfDay.set(row.day, line);
    rows.push(row);
  }
  if (rows.length === 0 && issues.length === 0) {
    const expected = 'at least one day of weather below the header';
    issues.push({ code: 'no-rows', line: lines.length, field: '', received: '', expected });
  }
  return issues.length > 0 ? { ok: false, issues } : { ok: true, record: recordOf(rows) };
}

function checkHeader(header: string[], issues: DailyCsvIssue[]): void {
  for (const [at, name] of header.entries()) {
    const issue = { line: 1, field: name, received: name };
    if (!allColumns.includes(name)) {
      issues.push({ code: 'unknown-column', ...issue, expected: `one of ${allColumns.join(', ')}` });
    } else if (header.indexOf(name) !== at) {
      issues.push({ code: 'repeated-column', ...issue, expected: 'each column once' });
    }
  }
  for (const name of neededColumns) {
    if (header.includes(name)) continue;
    const expected = `a column ${name}`;
    issues.push({ code: 'missing-column', line: 1, field: name, received: header.join(','), expected });
  }
}

function readRow(header: string[], cells: string[], line: number, issues: DailyCsvIssue[]): Row | null {
  const values = new Map<RecordField, number>();
  let day: DayNumber | null = null;
  for (const [at, name] of header.entries()) {
    const received = cells[at]!;
    const issue = { line, field: name, received };
    if (name === 'date') {
      day = parseDay(received);
      const year = Number(received.slice(0, 4));
      if (day === null) {
        issues.push({ code: 'bad-date', ...issue, expected: 'a day that exists, as YYYY-MM-DD' });
      } else if (year < firstYear || year > lastYear) {
        day = null;
        issues.push({ code: 'out-of-range', ...issue, expected: `a year from ${firstYear} to ${lastYear}` });
      }
      continue;
    }
    if (received === '') continue;
    const { field, low, high } = columns[name]!;
    const value = Number(received);
    if (!/^[+-]?(\d+\.?\d*|\.\d+)$/.test(received)) {
      const expected = 'a number with a decimal point, or nothing where it is unknown';
      issues.push({ code: 'bad-number', ...issue, expected });
    } else if (value < low || value > high) {
      issues.push({ code: 'out-of-range', ...issue, expected: `${low} to ${high}` });
    } else {
      values.set(field, value);
    }
  }
  const min = values.get('tempMinC');
  const max = values.get('tempMaxC');
  if (min !== undefined && max !== undefined && min > max) {
    const expected = `at most temp_max_c, ${max}`;
    issues.push({ code: 'min-above-max', line, field: 'temp_min_c', received: String(min), expected });
  }
  return day === null ? null : { day, values };
}

function recordOf(rows: Row[]): DailyRecord {
  let first = Number.POSITIVE_INFINITY;
  let last = Number.NEGATIVE_INFINITY;
  for (const { day } of rows) {
    first = Math.min(first, day);
    last = Math.max(last, day);
  }
  const record = emptyRecord(first, last - first + 1);
  for (const { day, values } of rows) {
    for (const [field, value] of values) {
      record[field][day - first] = value;
      record.known[field][day - first] = 1;
    }
  }
  return record;
}
