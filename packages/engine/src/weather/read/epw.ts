import { firstLineOf, linesOf } from '../lines-of.ts';
import { offsetAsked, refused, takenColumns } from './fixed-columns.ts';
import type {
  FileReading,
  ReadingPlace,
  WeatherCorrections,
  WeatherFormatReader,
  WeatherText,
} from './found.ts';
import { addHour, daysOfHourTable, type HourColumn, type HourTable } from './hourly-year.ts';
import { numberOf } from './json-values.ts';
import { isTypicalYear } from './typical-year.ts';

/*
 * EnergyPlus weather (its Auxiliary Programs manual, “EPW CSV Format”): eight header lines, then a line an hour, 1 to
 * 24, of which the last belongs to the printed day. Each quantity has a number of its own for “missing”.
 */
const columns: readonly HourColumn[] = [
  {
    column: 'Dry Bulb Temperature',
    as: 'tempC',
    unit: '°C',
    at: 6,
    isMissing: (value) => value >= 99.9,
    factor: 1,
  },
  {
    column: 'Global Horizontal Radiation',
    as: 'solarMJ',
    unit: 'Wh/m²',
    at: 13,
    isMissing: (value) => value >= 9999,
    factor: 0.0036,
  },
  {
    column: 'Liquid Precipitation Depth',
    as: 'rainMm',
    unit: 'mm',
    at: 33,
    isMissing: (value) => value >= 999,
    factor: 1,
  },
];
/** So are the makers of typical years named where the file tells its source. */
const typicalSources = /\b(I?WEC|CWEC|S?WEC|TMY\d?|TRY|CSWD|ISHRAE|typical)\b/i;

export const epw: WeatherFormatReader = {
  format: 'epw',
  knows: (text) => /^LOCATION,/i.test(firstLineOf(text)) && /^DATA PERIODS,/im.test(text.slice(0, 65_536)),
  read,
};

function read(
  { file, text, encoding }: WeatherText,
  corrections: WeatherCorrections,
  place: ReadingPlace,
): FileReading {
  const wanted = takenColumns(columns, corrections);
  if (!wanted.ok) return wanted;
  const table: HourTable = { rows: [], values: wanted.taken.map(() => []) };
  let location: string[] = [];
  let isBelow = false;
  let number = 0;
  for (const line of linesOf(text)) {
    number++;
    if (line.trim() === '') continue;
    const cells = line.split(',', 64);
    if (!isBelow) {
      if (/^LOCATION$/i.test(cells[0]!.trim())) location = cells;
      isBelow = /^DATA PERIODS$/i.test(cells[0]!.trim());
      continue;
    }
    const [year = '', month = '', date = '', hour = '', minute = ''] = cells;
    const issue = addHour(
      table,
      wanted.taken,
      cells,
      { year, month, date, minute: stampOf(hour, minute) },
      number,
    );
    if (issue !== null) return issue;
  }
  if (table.rows.length === 0) return refused('no-days', { expected: 'a line an hour below DATA PERIODS' });
  const [, name = '', , , source = '', , latitude, longitude, zone, elevation] = location;
  const zoneH = numberOf(zone);
  const isTypical = isTypicalYear(table.rows) || typicalSources.test(source);
  const asked = isTypical || zoneH === null ? null : offsetAsked(corrections, place);
  const shift = asked === null || zoneH === null ? 0 : (asked.offsetH - zoneH) * 60;
  const days = daysOfHourTable(table, wanted.taken, isTypical, shift);
  if (days.columns.length === 0) {
    return refused('no-values', {
      expected: 'a value of the temperature or the rain that is none of “missing”',
    });
  }
  return {
    ok: true,
    found: {
      file,
      format: 'epw',
      encoding,
      station: {
        name: /^(unknown|-)?$/i.test(name.trim()) ? null : name.trim(),
        latitudeDeg: numberOf(latitude),
        longitudeDeg: numberOf(longitude),
        elevationM: numberOf(elevation),
      },
      otherStations: [],
      typicalYear: isTypical,
      timeBase: 'local-standard',
      utcOffset: asked,
      dateOrder: null,
      missingCodes: [],
      unused: [],
      ...days,
    },
  };
}

/** The last minute that a row tells of; hourly rows have 0 or 60 for their minute. */
function stampOf(hour: string, minute: string): number {
  const within = Number(minute) % 60;
  const end = within === 0 ? Number(hour) * 60 : (Number(hour) - 1) * 60 + within;
  // some begin at hour 0
  return hour.trim() === '' ? Number.NaN : Math.max(0, end - 1);
}
