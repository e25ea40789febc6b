import { linesOf } from '../lines-of.ts';
import { type Refused, refused, takenColumns } from './fixed-columns.ts';
import type { FileReading, WeatherCorrections, WeatherFormatReader, WeatherText } from './found.ts';
import { addHour, daysOfHourTable, type HourColumn, type HourTable } from './hourly-year.ts';
import { numberOf } from './json-values.ts';

/*
 * TMY3 (Wilcox and Marion, Users Manual for TMY3 Data Sets, NREL/TP-581-43156, 2008): a line of the station, one of the
 * columns, then a line an hour, 01:00 to 24:00, of which the last belongs to the printed day. −9900 is missing.
 */
const isMissing = (value: number) => value <= -9900;
const columns: readonly Omit<HourColumn, 'at'>[] = [
  { column: 'Dry-bulb (C)', as: 'tempC', unit: '°C', isMissing, factor: 1 },
  { column: 'GHI (W/m^2)', as: 'solarMJ', unit: 'Wh/m²', isMissing, factor: 0.0036 },
  { column: 'Lprecip depth (mm)', as: 'rainMm', unit: 'mm', isMissing, factor: 1 },
];
const header = /^"?\w{4} \(MM\/DD\/YYYY\)"?,"?Time \(HH:MM\)"?,/i;

export const tmy3: WeatherFormatReader = {
  format: 'tmy3',
  knows: (text) => header.test(secondLineOf(text)),
  read,
};

function read({ file, text, encoding }: WeatherText, corrections: WeatherCorrections): FileReading {
  const lines = linesOf(text);
  const station = stationOf(lines.next().value ?? '');
  const names = (lines.next().value ?? '').split(',', 256).map((name) => name.replaceAll('"', '').trim());
  const there = columns.flatMap((one) => {
    const at = names.indexOf(one.column);
    return at < 0 ? [] : [{ ...one, at }];
  });
  if (there.length === 0) {
    return refused('no-values', { line: 2, received: names.slice(0, 5).join(','), expected: 'Dry-bulb (C)' });
  }
  const wanted = takenColumns(there, corrections);
  if (!wanted.ok) return wanted;
  const table: HourTable = { rows: [], values: wanted.taken.map(() => []) };
  let number = 2;
  for (const line of lines) {
    number++;
    if (line.trim() === '') continue;
    const issue = addLine(table, wanted.taken, line, number);
    if (issue !== null) return issue;
  }
  if (table.rows.length === 0)
    return refused('no-days', { expected: 'a line an hour below the names of the columns' });
  const days = daysOfHourTable(table, wanted.taken, true, 0);
  if (days.columns.length === 0) return refused('no-values', { expected: 'a value other than −9900' });
  const used = new Set<string>(wanted.taken.map(({ column }) => column));
  return {
    ok: true,
    found: {
      file,
      format: 'tmy3',
      encoding,
      station,
      otherStations: [],
      typicalYear: true,
      timeBase: 'local-standard',
      dateOrder: null,
      missingCodes: [],
      unused: names.slice(2).filter((name) => !used.has(name)),
      ...days,
    },
  };
}

function addLine(
  table: HourTable,
  taken: readonly HourColumn[],
  line: string,
  number: number,
): Refused | null {
  const cells = line.split(',', 256);
  const [, month = '', date = '', year = ''] =
    /^"?(\d{1,2})\/(\d{1,2})\/(\d{4})"?$/.exec(cells[0]!.trim()) ?? [];
  const [, hour, minute] = /^"?(\d{1,2}):(\d{2})"?$/.exec((cells[1] ?? '').trim()) ?? [];
  const stamp = hour === undefined ? Number.NaN : Math.max(0, Number(hour) * 60 + Number(minute) - 1);
  return addHour(table, taken, cells, { year, month, date, minute: stamp }, number);
}

/** `725300,"CHICAGO OHARE",IL,-6.0,41.983,-87.917,202`: number, name, state, time zone, place, elevation. */
function stationOf(line: string) {
  const cells = line.match(/"[^"]*"|[^,]+/g) ?? [];
  const [, name = '', , , latitude, longitude, elevation] = cells;
  return {
    name: name.replaceAll('"', '').trim() || null,
    latitudeDeg: numberOf(latitude),
    longitudeDeg: numberOf(longitude),
    elevationM: numberOf(elevation),
  };
}

function secondLineOf(text: string): string {
  const [, second = ''] = text.slice(0, 8192).split(/\r\n|\n|\r/, 2);
  return second;
}
