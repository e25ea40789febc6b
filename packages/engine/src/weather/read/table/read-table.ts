import type { MissingCode } from '../../missing-codes.ts';
import { checkDays, flag, noFlags } from '../flagged.ts';
import type {
  FileReading,
  FoundColumn,
  ReadingPlace,
  WeatherCorrections,
  WeatherQuantity,
  WeatherText,
} from '../found.ts';
import { inBase, kindOfQuantity, type UnitName } from '../units.ts';
import { cellsOf } from './cells.ts';
import { chooseColumns, type ReadColumn, settleRain } from './choose-columns.ts';
import { cleanValues, fieldOf } from './clean-values.ts';
import { askedColumns } from './corrected.ts';
import { type DateColumns, dateColumnsOf, placesOf } from './date-columns.ts';
import { datedBlocks } from './dated-blocks.ts';
import { recordOfDays, recordOfReadings } from './days-of-rows.ts';
import { sampleOf } from './delimiter.ts';
import { findTable, issue, linesOf, numberedNames, type Table } from './find-table.ts';
import { type Meaning, meaningOf } from './meaning.ts';
import { decimalMarkOf } from './numbers.ts';
import type { TableProfile } from './profile.ts';
import { type Rows, readRows } from './read-rows.ts';
import {
  dayOfRows,
  medianDays,
  minutesOf,
  spacingOf,
  standardTime,
  tellOffsets,
  timeBaseOf,
} from './stamps.ts';
import { stationColumn, stationOf } from './station.ts';
import { settleSun, unitsOf } from './units-of-columns.ts';

const sampledRows = 200;
/** Fewer rows than this may be days that someone happened to keep. */
const fewestRows = 10;

/** Reads a table of weather, as far as its format is known by that, and else by what stands in it. */
export function readTable(
  file: WeatherText,
  corrections: WeatherCorrections,
  place: ReadingPlace,
  profile: TableProfile,
): FileReading {
  const lines = linesOf(file.text);
  if (!lines.ok) return lines;
  const found = findTable(lines.value);
  if (!found.ok) return found;
  const table = found.value;
  const sample = sampleOf(lines.value.slice(table.from), sampledRows)
    .filter((line) => line !== lines.value[table.header])
    .map((line) => cellsOf(line, table.delimiter));
  padNames(table, sample);
  const asked = askedColumns(table.names, corrections);
  if (!asked.ok) return asked;
  const dates = dateColumnsOf(table.names, sample, corrections);
  const meanings = table.names.map((name, at) => (datesHave(dates, at) ? null : meant(profile, name)));
  for (const [at, meaning] of asked.value) meanings[at] = meaning;
  const values = meanings.flatMap((meaning, at) =>
    meaning !== null && kindOfQuantity(meaning.as) !== null ? [at] : [],
  );
  const header = table.header < 0 ? '' : lines.value[table.header]!;
  const headerLine = table.header < 0 ? null : table.header + 1;
  if (dates === null) {
    const whole = datedBlocks(lines.value);
    if (whole !== null) return readTable({ ...file, text: whole.join('\n') }, corrections, place, profile);
    const expected = 'a column of dates, or of year, month and day';
    if (values.length > 0) return issue('no-dates', table.from + 1, lines.value[table.from]!, expected);
    return issue('not-weather', headerLine, header, 'columns of dates and of temperature or rain');
  }
  if (values.length === 0) {
    return issue('no-values', headerLine, header, 'a column of temperature, rain or sun');
  }
  const isAmerican = table.names.some(
    ({ column, unit }) => unit === '°F' || unit === 'in' || /\bmph\b|inHg|in\. ?hg|\bhg\b/i.test(column),
  );
  const read = readRows({
    table,
    dates,
    decimal: decimalMarkOf(
      sample.flatMap((cells) => values.map((at) => cells[at] ?? '').filter((cell) => /[.,]/.test(cell))),
      table.delimiter !== ',',
    ),
    values,
    judges: profile.judges?.(table.names).filter(({ value }) => values.includes(value)) ?? [],
    station: stationColumn(table, sample),
    dateOrder: corrections.dateOrder,
    habits: {
      isAmerican: isAmerican || sample.some((cells) => cells.some((cell) => /\d\s?[ap]m$/i.test(cell))),
    },
  });
  if (!read.ok) return read;
  if (read.value.day.length === 0) return issue('no-days', null, '', 'at least one row with a date');
  const columns = values.map((at, column): ReadColumn => {
    return {
      name: table.names[at]!,
      meaning: meanings[at]!,
      values: read.value.values[column]!,
      hasDecimals: sample.some((cells) => /\d[.,]\d/.test(cells[at] ?? '')),
      isAsked: asked.value.has(at),
    };
  });
  return foundOf({ file, table, dates, columns, rows: read.value, isAmerican, corrections, place, profile });
}

const datesHave = (dates: DateColumns | null, column: number) =>
  dates !== null && placesOf(dates).includes(column);

function meant(profile: TableProfile, name: Table['names'][number]): Meaning | null {
  const known = profile.meaning?.(name);
  return known === undefined ? meaningOf(name) : known;
}

/** A table of which the first column has no name of its own has one name too few. */
function padNames(table: Table, sample: readonly string[][]): void {
  const { length } = table.names;
  const longer = sample.filter((cells) => cells.length === length + 1 && cells.at(-1) !== '');
  const isIndexed = longer.length > 0.9 * sample.length && longer.every((cells) => /^\d+$/.test(cells[0]!));
  if (isIndexed && length > 0) table.names.unshift({ ...numberedNames(1)[0]!, column: '' });
}

/** A table whose rows are read. */
type ReadRows = {
  file: WeatherText;
  table: Table;
  dates: DateColumns;
  columns: ReadColumn[];
  rows: Rows;
  isAmerican: boolean;
  corrections: WeatherCorrections;
  place: ReadingPlace;
  profile: TableProfile;
};

function foundOf(read: ReadRows): FileReading {
  const { file, table, dates, columns, rows, corrections, place, profile } = read;
  const spacing = spacingOf(rows);
  if (spacing === 'days' && rows.day.length > fewestRows && medianDays(rows.day) > 3) {
    return issue('no-days', null, '', 'a row for each day, or readings within days');
  }
  settleRain(columns, spacing, rows.day);
  settleSun(columns, spacing);
  const unitOf = unitsOf(columns, table.names, read.isAmerican, rows.isMonthFirst, profile);
  const chosen = chooseColumns(columns, spacing);
  const station = profile.station ?? stationOf(table);
  tellOffsets(rows, profile);
  const isAskedOnly = profile.fileOffsetMinutes !== undefined;
  const standard = standardTime(
    corrections,
    place.utcOffsetH,
    station?.longitudeDeg ?? null,
    rows,
    isAskedOnly,
  );
  const isUtc = spacing === 'readings' && rows.offset.some((offset) => !Number.isNaN(offset));
  const minute = minutesOf(rows, standard);
  const day = spacing === 'days' ? dayOfRows(rows) : minute.map((at) => Math.floor(at / 1440));

  const flags = noFlags();
  const clean = new Map<WeatherQuantity, Float64Array>();
  const missingCodes: MissingCode[] = [];
  for (const [as, column] of chosen) {
    const { values, codes } = cleanValues(column.values, unitOf(column), as, spacing === 'days', day, flags);
    clean.set(as, values);
    for (const code of codes) missingCodes.push({ column: column.name.column, ...code });
  }
  for (const { row, column, raw, why, leftOut } of rows.marks) {
    const marked = columns[column]!;
    const field = fieldOf(marked.meaning.as, raw);
    if (chosen.get(marked.meaning.as) !== marked) continue;
    flag(flags, day[row]!, field, inBase(raw, unitOf(marked)), why, leftOut);
  }
  if (clean.size === 0)
    return issue('no-values', null, '', 'a column of temperature, rain or sun that is not empty');
  const { record, daysWithRow } =
    spacing === 'days' ? recordOfDays(day, clean) : recordOfReadings(minute, clean);
  checkDays(record, flags);
  const used = foundColumns(table, dates, [...chosen.values()], unitOf);
  return {
    ok: true,
    found: {
      file: file.file,
      format: profile.format,
      encoding: file.encoding,
      station,
      otherStations: rows.otherStations,
      typicalYear: false,
      timeBase: timeBaseOf(isUtc, standard, rows, profile),
      utcOffset: isUtc && standard !== null ? standard : null,
      dateOrder: rows.dateOrder,
      columns: used,
      unused: table.names
        .map(({ column }) => column)
        .filter((name) => name !== '' && !used.some(({ column }) => column === name)),
      missingCodes,
      record,
      ...(rows.passedOver === null ? {} : { passedOver: rows.passedOver }),
      daysWithRow,
      ...flags,
    },
  };
}

function foundColumns(
  { names }: Table,
  dates: DateColumns,
  chosen: readonly ReadColumn[],
  unitOf: (column: ReadColumn) => UnitName,
): FoundColumn[] {
  const at = (column: number | null, as: WeatherQuantity): FoundColumn[] =>
    column === null || column < 0 ? [] : [{ column: names[column]?.column ?? '', as, unit: null }];
  const when = (): FoundColumn[] => {
    if (dates.kind === 'epoch') return at(dates.column, 'date');
    const clock = [...at(dates.time, 'time'), ...at(dates.hour, 'hour')];
    if (dates.kind === 'cells') return [...at(dates.date, 'date'), ...clock];
    const year = at(dates.year, 'year');
    if (dates.kind === 'day-of-year') return [...year, ...at(dates.day, 'day'), ...clock];
    return [...year, ...at(dates.month, 'month'), ...at(dates.day, 'day'), ...clock];
  };
  const values = chosen.map((column) => ({
    column: column.name.column,
    as: column.meaning.as,
    unit: unitOf(column),
  }));
  return [...when(), ...values];
}
