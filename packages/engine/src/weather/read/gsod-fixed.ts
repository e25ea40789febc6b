import { type DayNumber, parseDay } from '../../calendar/index.ts';
import { fahrenheitToCelsius, inchesToMm } from '../../units/index.ts';
import type { RecordField } from '../daily-record.ts';
import { firstLineOf, linesOf } from '../lines-of.ts';
import { type DaysMet, dayMet } from './days-met.ts';
import { type FixedColumn, refused, takenColumns, toldColumns } from './fixed-columns.ts';
import { fixedWidthFile } from './fixed-width-file.ts';
import { flag, noFlags } from './flagged.ts';
import type { FileReading, WeatherCorrections, WeatherFormatReader, WeatherText } from './found.ts';
import { firstYear, lastYear } from './years.ts';

/*
 * Global Surface Summary of the Day, a line a day (NOAA, GSOD_DESC.txt). Places are counted from 0 here. Behind the
 * highest and lowest stands * where they come from hourly readings; the flag of the rain is I where a station gave none.
 */
type Part = FixedColumn & {
  as: RecordField;
  from: number;
  to: number;
  missing: number;
  toSi: (value: number) => number;
};
const parts: readonly Part[] = [
  {
    column: 'MAX',
    as: 'tempMaxC',
    unit: '°F',
    from: 102,
    to: 108,
    missing: 9999.9,
    toSi: fahrenheitToCelsius,
  },
  {
    column: 'MIN',
    as: 'tempMinC',
    unit: '°F',
    from: 110,
    to: 116,
    missing: 9999.9,
    toSi: fahrenheitToCelsius,
  },
  { column: 'PRCP', as: 'rainMm', unit: 'in', from: 118, to: 123, missing: 99.99, toSi: inchesToMm },
];
const rainFlagAt = 123;
const noReport = 'I';

const header = /^STN-* +WBAN +YEARMODA/;
const row = /^([A-Z\d]{6}) (\d{5}) {2}(\d{4})(\d{2})(\d{2}) /;

export const gsodFixed: WeatherFormatReader = {
  format: 'gsod-fixed',
  knows: (text) => {
    const first = firstLineOf(text);
    return header.test(first) || row.test(first);
  },
  read,
};

function read(text: WeatherText, corrections: WeatherCorrections): FileReading {
  const wanted = takenColumns(parts, corrections);
  if (!wanted.ok) return wanted;
  const days: DaysMet = new Map();
  const flags = noFlags();
  const used = new Set<string>();
  const stations: string[] = [];
  let number = 0;
  for (const line of linesOf(text.text)) {
    number++;
    // files of several years set one behind the other have several heads
    if (line.trim() === '' || header.test(line)) continue;
    const head = row.exec(line);
    const day = head && dayOf(head);
    if (head === null || day === null) {
      const expected = 'a station, a WBAN number and a day as YYYYMMDD';
      return refused('bad-date', { line: number, field: 'YEARMODA', received: line.slice(0, 22), expected });
    }
    const station = `${head[1]}-${head[2]}`;
    if (!stations.includes(station)) stations.push(station);
    if (station !== stations[0]) continue;
    const values = dayMet(days, day);
    for (const { column, as, from, to, missing, toSi } of wanted.taken) {
      const cell = line.slice(from, to).trim();
      if (cell === '' || Number(cell) === missing) continue;
      if (!/^-?\d*\.\d+$/.test(cell)) {
        return refused('not-weather', { line: number, field: column, received: cell, expected: 'a number' });
      }
      const value = toSi(Number(cell));
      // printed as 0.00: it stands as the file has it, and is told
      if (as === 'rainMm' && line[rainFlagAt] === noReport)
        flag(flags, day, as, value, 'quality-flag', false);
      values[as] = value;
      used.add(column);
    }
  }
  if (days.size === 0) return refused('no-days', { expected: 'a line a day below the names of the columns' });
  if (used.size === 0) return refused('no-values', { expected: 'values of MAX, MIN or PRCP' });
  const met = { days, flags, stations, columns: toldColumns(parts, used), unused: [] };
  return { ok: true, found: fixedWidthFile(text, 'gsod-fixed', met) };
}

function dayOf([, , , year, month, date]: RegExpExecArray): DayNumber | null {
  const isInRange = Number(year) >= firstYear && Number(year) <= lastYear;
  return isInRange ? parseDay(`${year}-${month}-${date}`) : null;
}
