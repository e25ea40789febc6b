import { civilDate } from '../../../calendar/index.ts';
import { cellsOf } from './cells.ts';
import { type DateCell, parseDateCell, parseTime } from './date-cells.ts';
import type { DateColumns } from './date-columns.ts';
import { dayOfYearDay } from './day-of-parts.ts';
import type { Table } from './find-table.ts';
import { type DecimalMark, parseNumber } from './numbers.ts';

/** A function that reads when a row is of; it answers null where it is no row of data. */
export function whenReader({
  table,
  dates,
  decimal,
}: {
  table: Table;
  dates: DateColumns;
  decimal: DecimalMark;
}): (cells: readonly string[]) => DateCell | null {
  const isClock = 'hour' in dates && dates.hour !== null && isClockNumber(table, dates.hour);
  const clock = (cells: readonly string[], time: number | null, hour: number | null) => {
    if (time !== null) return parseTime(cells[time] ?? '') ?? hourTime(cells[time] ?? '', decimal, true);
    return hour === null ? noTime : hourTime(cells[hour] ?? '', decimal, isClock);
  };
  const isUtc = (column: number | null) =>
    column !== null && / utc| gmt/.test(table.names[column]?.words ?? '') ? 0 : Number.NaN;
  const ymd = (a: number, b: number, c: number, time: { minute: number; offset: number }): DateCell => {
    return { form: 'ymd', a, b, c, ...time };
  };
  switch (dates.kind) {
    case 'cells': {
      const named = isUtc(dates.time ?? dates.hour ?? dates.date);
      return (cells) => {
        const date = parseDateCell(cells[dates.date] ?? '');
        if (date === null) return null;
        const isTimed = dates.time !== null || dates.hour !== null;
        if (isTimed) {
          const time = clock(cells, dates.time, dates.hour);
          if (time === null) return null;
          date.minute = time.minute;
          date.offset = time.offset;
        }
        if (Number.isNaN(date.offset) && !Number.isNaN(date.minute)) date.offset = named;
        return date;
      };
    }
    case 'parts': {
      const named = isUtc(dates.time ?? dates.hour);
      return (cells) => {
        const time = clock(cells, dates.time, dates.hour);
        if (time === null) return null;
        const month = parseNumber(cells[dates.month] ?? '', decimal);
        const extra = dates.minute === null ? 0 : parseNumber(cells[dates.minute] ?? '', decimal) || 0;
        const [year, day] = [
          parseNumber(cells[dates.year] ?? '', decimal),
          parseNumber(cells[dates.day] ?? '', decimal),
        ];
        if (Number.isNaN(year + month + day)) return null;
        const offset = Number.isNaN(time.offset) ? named : time.offset;
        return ymd(year, month, day, { minute: time.minute + extra, offset });
      };
    }
    case 'day-of-year':
      return (cells) => {
        const time = clock(cells, dates.time, dates.hour);
        const year = parseNumber(cells[dates.year] ?? '', decimal);
        const day = dayOfYearDay(year, parseNumber(cells[dates.day] ?? '', decimal));
        return time === null || Number.isNaN(day) ? null : fromDay(day, time.minute, time.offset);
      };
    case 'epoch':
      return (cells) => {
        const value = parseNumber(cells[dates.column] ?? '', decimal);
        if (Number.isNaN(value)) return null;
        const isSerial = dates.unit === 'day';
        const minutes = isSerial ? (value - 25_569) * 1440 : value / (dates.unit === 'second' ? 60 : 60_000);
        const day = Math.floor(Math.round(minutes) / 1440);
        const rest = Math.round(minutes) - day * 1440;
        const isWhole = isSerial && Number.isInteger(value);
        return fromDay(day, isWhole ? Number.NaN : rest, isSerial ? Number.NaN : 0);
      };
  }
}

const noTime = { minute: Number.NaN, offset: Number.NaN };

function fromDay(day: number, minute: number, offset: number): DateCell {
  const date = civilDate(day);
  return { form: 'ymd', a: date.year, b: date.month, c: date.day, minute, offset };
}

/** An hour 0…24, with decimals or not; or hours and minutes as one number, 0…2400. */
function hourTime(
  cell: string,
  decimal: DecimalMark,
  isClock: boolean,
): { minute: number; offset: number } | null {
  const value = parseNumber(cell, decimal);
  if (!(value >= 0 && value <= 2400)) return null;
  if (!isClock) return value <= 24 ? { minute: Math.round(value * 60), offset: Number.NaN } : null;
  const minute = Math.floor(value / 100) * 60 + (value % 100);
  return value % 100 > 59 || minute > 1440 ? null : { minute, offset: Number.NaN };
}

/** Whether a column of hours has minutes too, as in 1730: some number in it is more than the hours of a day. */
function isClockNumber({ lines, from, delimiter }: Table, column: number): boolean {
  return lines
    .slice(from, from + 200)
    .some((line) => parseNumber(cellsOf(line, delimiter)[column] ?? '', '.') > 24);
}
