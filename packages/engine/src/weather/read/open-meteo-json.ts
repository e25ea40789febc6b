import { civilDate, parseDay } from '../../calendar/index.ts';
import { emptyRecord, type RecordField } from '../daily-record.ts';
import { type DaysMet, dayMet, recordOfDays } from './days-met.ts';
import { type FixedColumn, offsetAsked, refused, takenColumns } from './fixed-columns.ts';
import { checkDays, type Flags, noFlags } from './flagged.ts';
import type {
  FileReading,
  ReadingPlace,
  WeatherCorrections,
  WeatherFormatReader,
  WeatherText,
} from './found.ts';
import { joinRecords } from './join-records.ts';
import { documentOf, type JsonObject, listIn, numberIn, numberOf, objectIn, textIn } from './json-values.ts';
import { daysOfStamped, type Stamped, type StampedValues } from './stamped-readings.ts';
import { type ToBase, toBaseOf } from './units.ts';
import { firstYear, lastYear } from './years.ts';

/*
 * Open-Meteo's forecast and archive (its API's documentation): lists beside a list of times, by the hour, by the day, or
 * both, units in an object of their own. Amounts of an hour fell in the hour before its stamp. With several places the
 * document is a list.
 */
const daily = {
  temperature_2m_max: { as: 'tempMaxC', usual: '°C' },
  temperature_2m_min: { as: 'tempMinC', usual: '°C' },
  precipitation_sum: { as: 'rainMm', usual: 'mm' },
  shortwave_radiation_sum: { as: 'solarMJ', usual: 'MJ/m²' },
} as const satisfies Record<string, { as: RecordField; usual: string }>;
const hourly = {
  temperature_2m: { as: 'tempC', usual: '°C' },
  precipitation: { as: 'rainMm', usual: 'mm' },
  shortwave_radiation: { as: 'solarW', usual: 'W/m²' },
} as const satisfies Record<string, { as: Stamped; usual: string }>;

export const openMeteoJson: WeatherFormatReader = {
  format: 'open-meteo-json',
  knows: (text) =>
    /^\s*[[{]/.test(text.slice(0, 64)) &&
    /"(hourly|daily)"\s*:\s*\{/.test(text) &&
    /"time"\s*:\s*\[/.test(text),
  read,
};

type Part = 'daily' | 'hourly';
type Taken = FixedColumn & { part: Part; toBase: ToBase | null; values: readonly unknown[] };

function read(
  { file, text, encoding }: WeatherText,
  corrections: WeatherCorrections,
  place: ReadingPlace,
): FileReading {
  const parsed = documentOf(text);
  if (!parsed.ok) return parsed;
  const places = Array.isArray(parsed.content) ? parsed.content : [parsed.content];
  const content: unknown = places[0];
  const wanted = takenColumns([...columnsOf(content, 'daily'), ...columnsOf(content, 'hourly')], corrections);
  if (!wanted.ok) return wanted;
  const { taken } = wanted;
  const strange = taken.find(({ toBase }) => toBase === null);
  if (strange !== undefined) {
    const expected = 'a unit of temperature, rain or sunshine that is known here';
    return refused('unit-unknown', { field: strange.column, received: strange.unit, expected });
  }
  if (taken.length === 0) {
    const expected = 'temperature_2m, temperature_2m_max, temperature_2m_min or precipitation';
    return refused('no-values', { field: 'hourly', expected });
  }
  const offsetMinutes = (numberIn(content, 'utc_offset_seconds') ?? 0) / 60;
  const asked = offsetAsked(corrections, place);
  const shift = asked === null ? 0 : asked.offsetH * 60 - offsetMinutes;
  const flags = noFlags();
  const dayMinutes = minutesOf(content, 'daily', offsetMinutes);
  const hourMinutes = minutesOf(content, 'hourly', offsetMinutes);
  if (dayMinutes === null || hourMinutes === null) {
    return refused('bad-date', {
      field: 'time',
      expected: 'times as YYYY-MM-DDTHH:MM, or seconds since 1970',
    });
  }
  const hours = daysOfHours(
    taken,
    hourMinutes.map((minute) => minute + shift),
    flags,
  );
  const days = daysAsGiven(taken, dayMinutes);
  // what the service made of a day stands before what we make of its hours
  const record = joinRecords(hours.record, days.record);
  if (record.days === 0) return refused('no-days', { field: 'time', expected: 'at least one day' });
  checkDays(record, flags);
  const isByHour = taken.some(({ part }) => part === 'hourly');
  return {
    ok: true,
    found: {
      file,
      format: 'open-meteo-json',
      encoding,
      station: {
        name: null,
        latitudeDeg: numberIn(content, 'latitude'),
        longitudeDeg: numberIn(content, 'longitude'),
        elevationM: numberIn(content, 'elevation'),
      },
      otherStations: places.slice(1).map(pointOf),
      typicalYear: false,
      timeBase: isByHour && asked !== null ? 'local-standard' : offsetMinutes === 0 ? 'utc' : 'as-printed',
      utcOffset: isByHour ? asked : null,
      dateOrder: null,
      columns: taken.map(({ column, as, unit }) => ({ column, as, unit })),
      missingCodes: [],
      unused: unusedOf(content, taken),
      record,
      daysWithRow: Math.max(hours.daysWithRow, days.daysWithRow),
      ...flags,
    },
  };
}

function columnsOf(content: unknown, part: Part): Taken[] {
  const lists = objectIn(content, part);
  const units = objectIn(content, `${part}_units`);
  const columns = part === 'daily' ? daily : hourly;
  return Object.entries(columns).flatMap(([name, { as, usual }]) => {
    // where several models were asked, their names stand behind; the first is taken
    const column = Object.keys(lists).find((key) => key === name) ?? modelColumn(lists, name);
    if (column === undefined) return [];
    const unit = textIn(units, column) ?? usual;
    const toBase = toBaseOf(as, unit);
    return [{ column, as, unit, toBase, part, values: listIn(lists, column) }];
  });
}

function modelColumn(lists: JsonObject, name: string): string | undefined {
  return Object.keys(lists).find(
    (key) => key.startsWith(`${name}_`) && !/^_(max|min|mean|sum)/.test(key.slice(name.length)),
  );
}

function unusedOf(content: unknown, taken: readonly Taken[]): string[] {
  return (['daily', 'hourly'] as const).flatMap((part) =>
    Object.keys(objectIn(content, part)).filter(
      (name) => name !== 'time' && !taken.some((one) => one.part === part && one.column === name),
    ),
  );
}

/** Minutes since 1970 in the file's own time; null where one is no time. */
function minutesOf(content: unknown, part: Part, offsetMinutes: number): Float64Array | null {
  const times = listIn(objectIn(content, part), 'time');
  const minutes = new Float64Array(times.length);
  for (const [at, time] of times.entries()) {
    const minute = typeof time === 'number' ? time / 60 + offsetMinutes : minuteOf(time);
    const year = minute === null || !Number.isFinite(minute) ? 0 : civilDate(Math.floor(minute / 1440)).year;
    if (minute === null || !(year >= firstYear && year <= lastYear)) return null;
    minutes[at] = minute;
  }
  return minutes;
}

function minuteOf(time: unknown): number | null {
  const [, date = '', hour = '0', minute = '0'] =
    /^(\d{4}-\d{2}-\d{2})(?:T(\d{2}):(\d{2}))?$/.exec(String(time)) ?? [];
  const day = parseDay(date);
  return day === null ? null : day * 1440 + Number(hour) * 60 + Number(minute);
}

function daysOfHours(taken: readonly Taken[], minutes: Float64Array, flags: Flags) {
  const values: StampedValues = {};
  for (const { part, as, toBase, values: given } of taken) {
    if (part === 'hourly') values[as as Stamped] = minutes.map((_, at) => inBaseOf(given[at], toBase));
  }
  return daysOfStamped(minutes, values, flags);
}

function daysAsGiven(taken: readonly Taken[], minutes: Float64Array) {
  const days: DaysMet = new Map();
  for (const [at, minute] of minutes.entries()) {
    const known = dayMet(days, Math.floor(minute / 1440));
    for (const { part, as, toBase, values } of taken) {
      const value = part === 'daily' ? inBaseOf(values[at], toBase) : Number.NaN;
      if (!Number.isNaN(value)) known[as as RecordField] = value;
    }
  }
  const record = days.size === 0 ? emptyRecord(0, 0) : recordOfDays(days);
  return { record, daysWithRow: days.size };
}

function inBaseOf(given: unknown, toBase: ToBase | null): number {
  const value = numberOf(given);
  return value === null || toBase === null ? Number.NaN : toBase(value);
}

function pointOf(place: unknown): string {
  return `${numberIn(place, 'latitude') ?? '?'}, ${numberIn(place, 'longitude') ?? '?'}`;
}
