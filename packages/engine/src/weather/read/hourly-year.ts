import { parseDay } from '../../calendar/index.ts';
import { type FixedColumn, type Refused, refused } from './fixed-columns.ts';
import { checkDays, type Flags, noFlags } from './flagged.ts';
import type { FoundFile } from './found.ts';
import { daysOfStamped, type Stamped } from './stamped-readings.ts';
import { dayOfRow, type HourRow } from './typical-year.ts';
import { firstYear, lastYear } from './years.ts';

/** A column of an hourly file of a year: where it stands, which values stand for none, and what makes it SI. */
export type HourColumn = FixedColumn & {
  as: Stamped;
  at: number;
  isMissing(value: number): boolean;
  factor: number;
};

/** Rows of an hourly file, and its values column by column in SI; NaN where nothing stands. */
export type HourTable = { rows: HourRow[]; values: number[][] };

/** The cells of a line in the table; the refusal where they are none. @param minute from midnight of the printed day */
export function addHour(
  table: HourTable,
  columns: readonly HourColumn[],
  cells: readonly string[],
  printed: { year: string; month: string; date: string; minute: number },
  line: number,
): Refused | null {
  const { year, month, date, minute } = printed;
  const day = `${year.trim()}-${month.trim().padStart(2, '0')}-${date.trim().padStart(2, '0')}`;
  // typical years are told by months of years that may have had no 29 February
  const exists = parseDay(day) !== null && Number(year) >= firstYear && Number(year) <= lastYear;
  if (!exists || !(minute >= 0 && minute < 1440)) {
    const expected = `a day and an hour of the years ${firstYear} to ${lastYear}`;
    return refused('bad-date', {
      line,
      field: 'date',
      received: cells.slice(0, 4).join(',').slice(0, 40),
      expected,
    });
  }
  table.rows.push({ year: Number(year), month: Number(month), date: Number(date), minute });
  for (const [index, { column, at, isMissing, factor }] of columns.entries()) {
    const cell = (cells[at] ?? '').trim();
    const value = cell === '' ? Number.NaN : Number(cell);
    if (cell !== '' && !Number.isFinite(value)) {
      return refused('not-weather', {
        line,
        field: column,
        received: cell.slice(0, 40),
        expected: 'a number',
      });
    }
    table.values[index]!.push(isMissing(value) ? Number.NaN : value * factor);
  }
  return null;
}

type Days = Pick<FoundFile, 'record' | 'daysWithRow' | 'columns'> & Flags;

/** Days of the rows at face value, moved by `shift` minutes where the place's time is another. */
export function daysOfHourTable(
  { rows, values }: HourTable,
  columns: readonly HourColumn[],
  isTypical: boolean,
  shift: number,
): Days {
  const kept = rows.flatMap((row, at) => {
    const day = dayOfRow(row, isTypical);
    return day === null ? [] : [{ at, minute: day * 1440 + row.minute + shift }];
  });
  const flags = noFlags();
  const minutes = Float64Array.from(kept, ({ minute }) => minute);
  const quantities = columns.map(({ as }, index) => {
    const taken = Float64Array.from(kept, ({ at }) => values[index]![at]!);
    return [as, taken.every(Number.isNaN) ? null : taken] as const;
  });
  const given = Object.fromEntries(quantities.filter(([, taken]) => taken !== null));
  const { record, daysWithRow } = daysOfStamped(
    minutes,
    given as Partial<Record<Stamped, Float64Array>>,
    flags,
  );
  checkDays(record, flags);
  const told = columns.filter(({ as }) => as in given).map(({ column, as, unit }) => ({ column, as, unit }));
  return { record, daysWithRow, columns: told, ...flags };
}
