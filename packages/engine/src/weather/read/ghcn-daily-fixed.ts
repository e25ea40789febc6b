import { dayNumber, isLeapYear } from '../../calendar/index.ts';
import { believable } from '../believable.ts';
import type { RecordField } from '../daily-record.ts';
import { firstLineOf, linesOf } from '../lines-of.ts';
import { type DaysMet, dayMet } from './days-met.ts';
import { type FixedColumn, refused, takenColumns, toldColumns } from './fixed-columns.ts';
import { fixedWidthFile } from './fixed-width-file.ts';
import { flag, noFlags } from './flagged.ts';
import type { FileReading, WeatherCorrections, WeatherFormatReader, WeatherText } from './found.ts';
import { firstYear, lastYear } from './years.ts';

/*
 * GHCN-Daily, a line for a month of an element (NOAA, readme.txt of the data set, part III): station 1–11, year 12–15,
 * month 16–17, element 18–21, then 31 times a value of five places and the flags of measurement, quality and source.
 */
const columns: readonly (FixedColumn & { as: RecordField })[] = [
  { column: 'TMAX', as: 'tempMaxC', unit: '0.1 °C' },
  { column: 'TMIN', as: 'tempMinC', unit: '0.1 °C' },
  { column: 'PRCP', as: 'rainMm', unit: '0.1 mm' },
];
/** Rain of several days together: it says nothing of one of them. */
const ofSeveralDays = 'MDPR';
const notMeasured = -9999;
const firstValueAt = 21;
const valueLength = 8;

const monthLengths = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];

export const ghcnDailyFixed: WeatherFormatReader = {
  format: 'ghcn-daily-fixed',
  knows: (text) => /^[A-Z]{2}[A-Z0-9_-]{9}\d{4}(0[1-9]|1[0-2])[A-Z0-9]{4}[ \d-]{4}\d/.test(firstLineOf(text)),
  read,
};

function read(text: WeatherText, corrections: WeatherCorrections): FileReading {
  const wanted = takenColumns(columns, corrections);
  if (!wanted.ok) return wanted;
  const fields = new Map(wanted.taken.map(({ column, as }) => [column, as]));
  const days: DaysMet = new Map();
  const flags = noFlags();
  const used = new Set<string>();
  const others = new Set<string>();
  const stations = new Set<string>();
  let number = 0;
  for (const line of linesOf(text.text)) {
    number++;
    if (line.trim() === '') continue;
    const parts = /^(.{11})(\d{4})(\d{2})(.{4})/.exec(line);
    if (parts === null) {
      const expected = 'a station of 11 characters, a year, a month and an element';
      return refused('bad-date', { line: number, received: line.slice(0, firstValueAt), expected });
    }
    const [, station, yearText, monthText, element] = parts;
    const year = Number(yearText);
    const month = Number(monthText);
    if (year < firstYear || year > lastYear || month < 1 || month > 12) {
      const expected = `a month from ${firstYear}01 to ${lastYear}12`;
      return refused('bad-date', { line: number, field: 'date', received: yearText + monthText, expected });
    }
    stations.add(station);
    // a file is read for the first of its stations
    if (!line.startsWith(firstOf(stations))) continue;
    const field = element === ofSeveralDays ? 'rainMm' : fields.get(element);
    if (field === undefined) {
      others.add(element);
      continue;
    }
    const monthDays = month === 2 && isLeapYear(year) ? 29 : monthLengths[month - 1];
    for (let date = 1; date <= monthDays; date++) {
      const at = firstValueAt + (date - 1) * valueLength;
      const cell = line.slice(at, at + 5).trim();
      if (cell === '' || Number(cell) === notMeasured) continue;
      if (!/^-?\d+$/.test(cell)) {
        const expected = 'a whole number of tenths';
        return refused('not-weather', { line: number, field: element, received: cell, expected });
      }
      const day = dayNumber(year, month, date);
      const value = Number(cell) / 10;
      const { low, high } = believable[field];
      const why =
        element === ofSeveralDays
          ? 'accumulated'
          : (line[at + 6] ?? ' ') !== ' '
            ? 'quality-flag'
            : value < low || value > high
              ? 'out-of-range'
              : null;
      if (why !== null) {
        flag(flags, day, field, value, why, true);
        continue;
      }
      used.add(element);
      dayMet(days, day)[field] = value;
    }
  }
  if (days.size === 0) {
    const received = [...others].join(', ');
    return refused('no-values', { field: 'element', received, expected: 'values of TMAX, TMIN or PRCP' });
  }
  const met = { days, flags, stations, columns: toldColumns(columns, used), unused: [...others] };
  return { ok: true, found: fixedWidthFile(text, 'ghcn-daily-fixed', met) };
}

function firstOf(names: ReadonlySet<string>): string {
  const [first] = names;
  return first;
}
