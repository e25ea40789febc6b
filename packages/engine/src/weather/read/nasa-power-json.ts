import { parseDay } from '../../calendar/index.ts';
import type { RecordField } from '../daily-record.ts';
import { type DaysMet, dayMet, recordOfDays } from './days-met.ts';
import { type Refused, refused, takenColumns } from './fixed-columns.ts';
import { checkDays, type Flags, noFlags } from './flagged.ts';
import type {
  FileReading,
  FoundFile,
  WeatherCorrections,
  WeatherFormatReader,
  WeatherText,
} from './found.ts';
import { documentOf, type JsonObject, listIn, numberIn, numberOf, objectIn, textIn } from './json-values.ts';
import { daysOfStamped, type Stamped, type StampedValues } from './stamped-readings.ts';
import { type ToBase, toBaseOf } from './units.ts';
import { firstYear, lastYear } from './years.ts';

/*
 * NASA POWER, GeoJSON of a point (POWER API, daily and hourly): longitude stands first, a value for each day or hour
 * under its parameter, the fill value and the units beside them. Older files name some of these otherwise.
 */
type Parameter = { name: string; as: RecordField; hourlyAs: Stamped | null; usual: string };
const parameters: readonly Parameter[] = [
  { name: 'T2M_MAX', as: 'tempMaxC', hourlyAs: null, usual: 'C' },
  { name: 'T2M_MIN', as: 'tempMinC', hourlyAs: null, usual: 'C' },
  { name: 'T2M', as: 'tempMaxC', hourlyAs: 'tempC', usual: 'C' },
  { name: 'PRECTOTCORR', as: 'rainMm', hourlyAs: 'rainMm', usual: 'mm' },
  { name: 'PRECTOT', as: 'rainMm', hourlyAs: 'rainMm', usual: 'mm' },
  { name: 'ALLSKY_SFC_SW_DWN', as: 'solarMJ', hourlyAs: 'solarMJ', usual: 'MJ/m^2/day' },
];
const usualFill = -999;

export const nasaPowerJson: WeatherFormatReader = {
  format: 'nasa-power-json',
  knows: (text) => text.slice(0, 64).trimStart().startsWith('{') && /"parameter"\s*:\s*\{/.test(text),
  read,
};

type Taken = Parameter & { unit: string; toBase: ToBase; values: JsonObject };

function read({ file, text, encoding }: WeatherText, corrections: WeatherCorrections): FileReading {
  const parsed = documentOf(text);
  if (!parsed.ok) return parsed;
  const { content } = parsed;
  const feature = listIn(content, 'features')[0] ?? content;
  const holder = objectIn(objectIn(feature, 'properties'), 'parameter');
  const header = objectIn(content, 'header');
  const fill = numberIn(header, 'fill_value') ?? numberIn(header, 'fillValue') ?? usualFill;
  const [stamp = ''] = Object.keys(
    Object.values(holder).map((values) => objectIn({ values }, 'values'))[0] ?? {},
  );
  const isHourly = /^\d{10}$/.test(stamp);

  const columns = parameters
    .filter(
      ({ name, hourlyAs }) => Object.hasOwn(holder, name) && (isHourly ? hourlyAs !== null : name !== 'T2M'),
    )
    .map((parameter) => ({ ...parameter, column: parameter.name, unit: unitOf(content, parameter) }));
  const wanted = takenColumns(columns, corrections);
  if (!wanted.ok) return wanted;
  const taken: Taken[] = [];
  for (const column of wanted.taken) {
    const toBase = toBaseOf(column.as, column.unit);
    if (toBase === null) {
      const expected = 'a unit of temperature, rain or sunshine that is known here';
      return refused('unit-unknown', { field: column.name, received: column.unit, expected });
    }
    // of two rains the first is taken
    if (taken.some(({ as }) => as === column.as)) continue;
    taken.push({ ...column, toBase, values: objectIn(holder, column.name) });
  }
  if (taken.length === 0) {
    const received = Object.keys(holder).join(', ').slice(0, 80);
    return refused('no-values', {
      field: 'parameter',
      received,
      expected: 'T2M_MAX, T2M_MIN or PRECTOTCORR',
    });
  }
  const flags = noFlags();
  const days = isHourly ? daysOfHours(taken, fill, flags) : daysAsGiven(taken, fill);
  if (!('record' in days)) return days;
  const coordinates = listIn(objectIn(feature, 'geometry'), 'coordinates').map(numberOf);
  const [longitudeDeg = null, latitudeDeg = null, elevationM = null] = coordinates;
  checkDays(days.record, flags);
  const standard = textIn(header, 'time_standard');
  return {
    ok: true,
    found: {
      file,
      format: 'nasa-power-json',
      encoding,
      station: { name: null, latitudeDeg, longitudeDeg, elevationM },
      otherStations: listIn(content, 'features')
        .slice(1)
        .map((_, at) => String(at + 2)),
      typicalYear: false,
      timeBase: standard === 'UTC' ? 'utc' : standard === 'LST' ? 'local-standard' : 'as-printed',
      dateOrder: null,
      columns: taken.map(({ name, as, hourlyAs, unit }) => ({
        column: name,
        as: isHourly && hourlyAs !== null ? hourlyAs : as,
        unit,
      })),
      missingCodes: [],
      unused: Object.keys(holder).filter((name) => !taken.some((one) => one.name === name)),
      ...days,
      ...flags,
    },
  };
}

function unitOf(content: unknown, { name, usual }: Parameter): string {
  const now = textIn(objectIn(objectIn(content, 'parameters'), name), 'units');
  return now ?? textIn(objectIn(objectIn(content, 'parameterInformation'), name), 'units') ?? usual;
}

type Days = Pick<FoundFile, 'record' | 'daysWithRow'>;

function daysAsGiven(taken: readonly Taken[], fill: number): Days | Refused {
  const days: DaysMet = new Map();
  for (const { as, toBase, values } of taken) {
    for (const [stamp, given] of Object.entries(values)) {
      const day = dayOf(stamp);
      if (day === null) {
        // a thirteenth month stands for the year in monthly files, which have no days
        return refused('bad-date', {
          field: 'parameter',
          received: stamp.slice(0, 20),
          expected: 'days as YYYYMMDD',
        });
      }
      const value = numberOf(given);
      const known = dayMet(days, day);
      if (value !== null && value !== fill) known[as] = toBase(value);
    }
  }
  if (days.size === 0) return refused('no-days', { field: 'parameter', expected: 'a value a day' });
  return { record: recordOfDays(days), daysWithRow: days.size };
}

function daysOfHours(taken: readonly Taken[], fill: number, flags: Flags): Days | Refused {
  const stamps = [...new Set(taken.flatMap(({ values }) => Object.keys(values)))].sort();
  const minutes = new Float64Array(stamps.length);
  for (const [at, stamp] of stamps.entries()) {
    const day = dayOf(stamp.slice(0, 8));
    if (day === null || !/^\d{10}$/.test(stamp) || Number(stamp.slice(8)) > 23) {
      return refused('bad-date', {
        field: 'parameter',
        received: stamp.slice(0, 20),
        expected: 'hours as YYYYMMDDHH',
      });
    }
    // an hour is named by its beginning: all of it is of that day
    minutes[at] = day * 1440 + Number(stamp.slice(8)) * 60 + 59;
  }
  const values: StampedValues = {};
  for (const { hourlyAs, toBase, values: given } of taken) {
    if (hourlyAs === null) continue;
    values[hourlyAs] = Float64Array.from(stamps, (stamp) => {
      const value = numberOf(given[stamp]);
      return value === null || value === fill ? Number.NaN : toBase(value);
    });
  }
  return daysOfStamped(minutes, values, flags);
}

function dayOf(stamp: string): number | null {
  const [, year, month, date] = /^(\d{4})(\d{2})(\d{2})$/.exec(stamp) ?? [];
  if (year === undefined || Number(year) < firstYear || Number(year) > lastYear) return null;
  return parseDay(`${year}-${month}-${date}`);
}
