import { longestCell } from '../../../limits/index.ts';
import type { DateOrder, FlaggedValue, WeatherIssue } from '../found.ts';
import { cellsOf } from './cells.ts';
import { type DateColumns, placesOf } from './date-columns.ts';
import { dateOrderOf, type Habits } from './date-order.ts';
import { dayOf, dayOfParts } from './day-of-parts.ts';
import { isComment } from './delimiter.ts';
import { issue, type Table } from './find-table.ts';
import { type DecimalMark, parseNumber } from './numbers.ts';
import { whenReader } from './when.ts';

/** A quality mark beside a value: what it means for it; null for nothing. */
export type Judge = (mark: string, cell: string) => { why: FlaggedValue['why']; leftOut: boolean } | null;

/** What is read of each row. */
export type Wanted = {
  table: Table;
  dates: DateColumns;
  decimal: DecimalMark;
  /** Columns of values, by place. */
  values: readonly number[];
  /** Columns whose marks judge one of values. */
  judges: readonly { value: number; mark: number; judge: Judge }[];
  /** Column that tells several stations apart; −1 for none. */
  station: number;
  dateOrder: DateOrder | null;
  habits: Habits;
};

type Mark = { row: number; column: number; raw: number; why: FlaggedValue['why']; leftOut: boolean };

/** Rows with a date, as they stand in the file. */
export type Rows = {
  day: Float64Array;
  /** Minutes after midnight, NaN where none is told. */
  minute: Float64Array;
  /** Minutes ahead of UTC, NaN where it is not told. */
  offset: Float64Array;
  /** Of each wanted column, NaN where there is no number. */
  values: Float64Array[];
  marks: Mark[];
  /** Null: nothing was open. */
  dateOrder: DateOrder | null;
  isMonthFirst: boolean;
  /** Rows in which no day that exists could be read. */
  passedOver: { rows: number; firstLine: number } | null;
  /** Stations whose rows were passed over. */
  otherStations: string[];
};

/** More rows than this share of them without a date mean that something else is read for one. */
const badShare = 0.2;
const trace = /^(?:t|tr|trace|traces|ip|spur|<\s?\d*[.,]?\d+)$/i;

/** Reads the rows below the header. */
export function readRows(wanted: Wanted): { ok: true; value: Rows } | { ok: false; issue: WeatherIssue } {
  const { table, dates, decimal, values, judges } = wanted;
  const { lines, delimiter, from, header } = table;
  const most = lines.length - from;
  const isOpen = new Uint8Array(most);
  const lineOf = new Int32Array(most);
  const parts = { a: new Int32Array(most), b: new Int32Array(most), c: new Int32Array(most) };
  const minute = new Float64Array(most);
  const offset = new Float64Array(most);
  const columns = values.map(() => new Float64Array(most));
  const marks: Mark[] = [];
  const stations = new Map<string, number>();
  const stationOf: string[] = [];
  const headerLine = header < 0 ? null : lines[header];
  const needed =
    1 + Math.max(wanted.station, ...placesOf(dates), ...values, ...judges.map(({ mark }) => mark));
  const when = whenReader(wanted);
  const dated = dates.kind === 'cells' ? dates.date : dates.kind === 'epoch' ? dates.column : dates.year;
  let count = 0;
  let bad: { line: number; received: string } | null = null;
  let badRows = 0;
  for (let at = from; at < lines.length; at++) {
    const line = lines[at]!;
    if (line === '' || line === headerLine || isComment(line)) continue;
    const cells = cellsOf(line, delimiter, needed);
    if (cells.every((cell) => cell === '')) continue;
    const date = when(cells);
    if (date === null) {
      // sums, means and heads between the rows
      if (!/\d/.test(cells[dated] ?? '')) continue;
      badRows++;
      bad ??= { line: at + 1, received: cells.slice(0, 3).join(' ') };
      continue;
    }
    lineOf[count] = at + 1;
    isOpen[count] = date.form === 'open' ? 1 : 0;
    parts.a[count] = date.a;
    parts.b[count] = date.b;
    parts.c[count] = date.c;
    minute[count] = date.minute;
    offset[count] = date.offset;
    for (let column = 0; column < values.length; column++) {
      const cell = cells[values[column]!] ?? '';
      if (cell.length > longestCell) {
        return issue(
          'long-cell',
          at + 1,
          cell,
          `at most ${longestCell} characters`,
          table.names[values[column]!]?.column,
        );
      }
      let value = cell === '' ? Number.NaN : parseNumber(cell, decimal);
      if (cell !== '' && Number.isNaN(value) && trace.test(cell)) value = 0;
      columns[column]![count] = value;
    }
    for (const { value, mark, judge } of judges) {
      const column = values.indexOf(value);
      const raw = columns[column]![count]!;
      if (Number.isNaN(raw)) continue;
      const judged = judge(cells[mark] ?? '', cells[value] ?? '');
      if (judged === null) continue;
      marks.push({ row: count, column, raw, ...judged });
      if (judged.leftOut) columns[column]![count] = Number.NaN;
    }
    if (wanted.station >= 0) {
      const name = cells[wanted.station] ?? '';
      stationOf[count] = name;
      stations.set(name, (stations.get(name) ?? 0) + 1);
    }
    count++;
  }
  if (bad !== null && badRows > badShare * (badRows + count)) {
    return issue('bad-date', bad.line, bad.received, 'a date in each row');
  }

  const order = orderOf(wanted, isOpen, parts, count);
  const day = new Float64Array(count);
  const kept: number[] = [];
  const station = [...stations].reduce((a, b) => (b[1] > a[1] ? b : a), ['', 0])[0];
  let impossible = 0;
  let firstBad = bad?.line ?? Number.POSITIVE_INFINITY;
  for (let row = 0; row < count; row++) {
    const { a, b, c } = parts;
    day[row] =
      isOpen[row] === 1
        ? dayOfParts(order.order, a[row]!, b[row]!, c[row]!)
        : dayOf(a[row]!, b[row]!, c[row]!);
    if (Number.isNaN(day[row]!)) {
      impossible++;
      firstBad = Math.min(firstBad, lineOf[row]!);
    } else if (stations.size < 2 || stationOf[row] === station) kept.push(row);
  }
  if (impossible > badShare * count) {
    return issue('bad-date', from + 1, lines[from]!, 'a day that exists, of the years 1700 to 2200');
  }
  const take = (from: Float64Array) => {
    if (kept.length === count) return from.subarray(0, count);
    const taken = new Float64Array(kept.length);
    for (let at = 0; at < kept.length; at++) taken[at] = from[kept[at]!]!;
    return taken;
  };
  const rowOf = new Int32Array(count).fill(-1);
  for (const [at, row] of kept.entries()) rowOf[row] = at;
  return {
    ok: true,
    value: {
      day: take(day),
      minute: take(minute),
      offset: take(offset),
      values: columns.map(take),
      marks: marks.flatMap((mark) => (rowOf[mark.row]! < 0 ? [] : [{ ...mark, row: rowOf[mark.row]! }])),
      dateOrder: order.isGuessed ? order.order : null,
      isMonthFirst: order.order === 'mdy',
      passedOver:
        firstBad === Number.POSITIVE_INFINITY ? null : { rows: badRows + impossible, firstLine: firstBad },
      otherStations: [...stations.keys()].filter((name) => name !== station),
    },
  };
}

function orderOf(
  { dateOrder, habits }: Wanted,
  isOpen: Uint8Array,
  parts: { a: Int32Array; b: Int32Array; c: Int32Array },
  count: number,
): { order: DateOrder; isGuessed: boolean } {
  if (dateOrder !== null) return { order: dateOrder, isGuessed: isOpen.includes(1) };
  if (!isOpen.includes(1)) return { order: 'ymd', isGuessed: false };
  const open = (values: Int32Array) =>
    values.subarray(0, count).map((value, at) => (isOpen[at] === 1 ? value : 0));
  return dateOrderOf({ a: open(parts.a), b: open(parts.b), c: open(parts.c) }, habits);
}
