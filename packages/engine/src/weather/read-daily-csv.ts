import { type DayNumber, parseDay } from '../calendar/index.ts';
import { dailyLines, longestCell, weatherColumns } from '../limits/index.ts';
import { believable } from './believable.ts';
import { type DailyRecord, emptyRecord, type RecordField } from './daily-record.ts';
import { linesOf } from './lines-of.ts';
import { type MissingCode, missingCodesIn } from './missing-codes.ts';

/** What is wrong with a daily weather file, where, and what was expected there. */
export type DailyCsvIssue = {
  code:
    | 'no-rows'
    | 'unknown-column'
    | 'missing-column'
    | 'repeated-column'
    | 'too-many-columns'
    | 'too-many-lines'
    | 'wrong-cell-count'
    | 'long-cell'
    | 'bad-date'
    | 'repeated-date'
    | 'bad-number'
    | 'out-of-range'
    | 'min-above-max';
  /** Line of the file, 1 for the first. */
  line: number;
  /** Column name as the file has it; empty where the issue is with the whole line. */
  field: string;
  /** What stands there, the beginning of a cell that is too long. */
  received: string;
  expected: string;
};

/** The record of a CSV, or all that stands against it. */
export type DailyCsvResult =
  /** `rows`: days that have a line. */
  | { ok: true; record: DailyRecord; missingCodes: MissingCode[]; rows: number }
  | { ok: false; issues: DailyCsvIssue[] };

/** Column → series field. */
export const dailyColumns = {
  temp_min_c: 'tempMinC',
  temp_max_c: 'tempMaxC',
  rain_mm: 'rainMm',
  solar_mj_m2: 'solarMJ',
} as const satisfies Record<string, RecordField>;
const columns: readonly (readonly [name: string, field: RecordField])[] = Object.entries(dailyColumns);
const fieldOf = new Map(columns);
const neededColumns = ['date', 'temp_min_c', 'temp_max_c'];
const allColumns = ['date', ...fieldOf.keys()];
/** Years a record may cover; also keeps a mistyped year from asking for endless memory. */
const firstYear = 1700;
const lastYear = 2200;

type Row = { day: DayNumber; line: number; values: Map<RecordField, number> };

/**
 * Reads a daily weather file: comma-separated text with a header naming `date` (YYYY-MM-DD), `temp_min_c`,
 * `temp_max_c` and, if at hand, `rain_mm` and `solar_mj_m2`, columns and days in any order. An empty cell is an
 * unknown value, and so is a code that stands for one; absent days are unknown. Any issue refuses the file; all are
 * returned, but for a file beyond its limits, which is given up where it passes them.
 */
export function readDailyCsv(text: string): DailyCsvResult {
  const lines = linesOf(text.replace(/^\uFEFF/, ''));
  const issues: DailyCsvIssue[] = [];
  const header = cellsOf(lines.next().value ?? '');
  checkHeader(header, issues);
  if (issues.length > 0) return { ok: false, issues };

  const rows: Row[] = [];
  const lineOfDay = new Map<number, number>();
  let line = 1;
  for (const text of lines) {
    if (++line > dailyLines) {
      const expected = `at most ${dailyLines} lines`;
      return { ok: false, issues: [{ code: 'too-many-lines', line, field: '', received: '', expected }] };
    }
    if (text.trim() === '') continue;
    const cells = cellsOf(text);
    if (cells.length !== header.length) {
      const expected = `${header.length} cells, as in the header`;
      const received = `${cells.length > weatherColumns ? `more than ${weatherColumns}` : cells.length} cells`;
      issues.push({ code: 'wrong-cell-count', line, field: '', received, expected });
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
    issues.push({ code: 'no-rows', line, field: '', received: '', expected });
  }
  const missingCodes = leaveOutCodes(rows);
  checkValues(rows, issues);
  if (issues.length === 0) return { ok: true, record: recordOf(rows), missingCodes, rows: rows.length };
  return { ok: false, issues: issues.sort((a, b) => a.line - b.line) };
}

/** The cells of a line; of one that has too many, one more than there may be. */
function cellsOf(line: string): string[] {
  return line.split(',', weatherColumns + 1).map((cell) => cell.trim());
}

function checkHeader(header: string[], issues: DailyCsvIssue[]): void {
  if (header.length > weatherColumns) {
    const received = `more than ${weatherColumns} columns`;
    const expected = `at most ${weatherColumns} columns`;
    issues.push({ code: 'too-many-columns', line: 1, field: '', received, expected });
    return;
  }
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
    if (received.length > longestCell) {
      const expected = `at most ${longestCell} characters`;
      issues.push({ code: 'long-cell', ...issue, received: received.slice(0, longestCell), expected });
      continue;
    }
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
    if (/^[+-]?(\d+(\.\d*)?|\.\d+)$/.test(received)) values.set(fieldOf.get(name)!, Number(received));
    else {
      const expected = 'a number with a decimal point, or nothing where it is unknown';
      issues.push({ code: 'bad-number', ...issue, expected });
    }
  }
  return day === null ? null : { day, line, values };
}

/** Takes codes for “not measured” out of the rows. */
function leaveOutCodes(rows: readonly Row[]): MissingCode[] {
  return columns.flatMap(([column, field]) => {
    const { low, high } = believable[field];
    const found = missingCodesIn(
      rows.flatMap(({ values }) => values.get(field) ?? []),
      (value) => value >= low && value <= high,
    );
    for (const { values } of rows) if (found.has(values.get(field) ?? 0)) values.delete(field);
    return [...found].map(([code, days]) => ({ column, code, days }));
  });
}

function checkValues(rows: readonly Row[], issues: DailyCsvIssue[]): void {
  for (const { line, values } of rows) {
    for (const [name, field] of columns) {
      const { low, high } = believable[field];
      const value = values.get(field);
      if (value === undefined || (value >= low && value <= high)) continue;
      const expected = `${low} to ${high}`;
      issues.push({ code: 'out-of-range', line, field: name, received: String(value), expected });
    }
    const min = values.get('tempMinC');
    const max = values.get('tempMaxC');
    if (min !== undefined && max !== undefined && min > max) {
      const expected = `at most temp_max_c, ${max}`;
      issues.push({ code: 'min-above-max', line, field: 'temp_min_c', received: String(min), expected });
    }
  }
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
