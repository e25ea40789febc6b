import { formatDay, parseDay } from '../calendar/index.ts';
import { type RecordField, recordFields } from '../weather/index.ts';
import { gardenRanges } from './garden.ts';
import { isDate } from './observation.ts';
import { givenId, isNumberIn, type RestoreEntry, type Tell, type Unknown } from './restoring.ts';

/** Where days of a record came from. */
export type WeatherSource = Unknown & {
  /** Name of the file, or the host that was asked. */
  name: string;
  /** What it was found to be; see `weatherFormats`. */
  format: string | null;
  /** ISO dates of its first and last day. */
  from: string;
  to: string;
};

/** The weather that came at a place, day after day from `firstDate` on; null where nothing was measured. One to a place. */
export type GardenWeather = Unknown & {
  id: string;
  placeId: string | null;
  firstDate: string;
  /** All four are of one length. */
  tempMinC: (number | null)[];
  tempMaxC: (number | null)[];
  rainMm: (number | null)[];
  solarMJ: (number | null)[];
  /** Days from here on were forecast, not measured; null: none. */
  forecastFrom: string | null;
  sources: WeatherSource[];
};

/** Days that a garden keeps of a place: a century. */
export const mostWeatherDays = 36_525;

/** Weather without a first day is none. */
export const restoreWeather: RestoreEntry<GardenWeather> = (found, path, tell) => {
  if (!isDate(found.firstDate)) return null;
  const columns = recordFields.map((field) => column(found[field], field, path, tell));
  const days = Math.max(...columns.map(({ length }) => length));
  if (days === 0) return null;
  // of more than are kept the latest stay
  const dropped = Math.max(0, days - mostWeatherDays);
  if (dropped > 0) tell('emptied', `${path}.firstDate`, found.firstDate);
  const [tempMinC, tempMaxC, rainMm, solarMJ] = columns.map((values) => {
    const whole = values.length === days ? values : [...values, ...Array(days - values.length).fill(null)];
    return dropped > 0 ? whole.slice(dropped) : whole;
  });
  return {
    ...found,
    id: givenId(found),
    placeId: typeof found.placeId === 'string' ? found.placeId : null,
    firstDate: dropped > 0 ? formatDay((parseDay(found.firstDate) ?? 0) + dropped) : found.firstDate,
    tempMinC,
    tempMaxC,
    rainMm,
    solarMJ,
    forecastFrom: isDate(found.forecastFrom) ? found.forecastFrom : null,
    sources: sourcesOf(found.sources),
  };
};

function column(value: unknown, field: RecordField, path: string, tell: Tell): (number | null)[] {
  if (!Array.isArray(value)) {
    if (value !== undefined && value !== null) tell('emptied', `${path}.${field}`, value);
    return [];
  }
  const isFit = (entry: unknown) => entry === null || isNumberIn(entry, gardenRanges[field]);
  // most columns are whole, and long
  if (value.every(isFit)) return value;
  let told = false;
  return value.map((entry: unknown, at) => {
    if (isFit(entry)) return entry as number | null;
    // one of a column is told
    if (!told) tell('emptied', `${path}.${field}[${at}]`, entry);
    told = true;
    return null;
  });
}

function sourcesOf(found: unknown): WeatherSource[] {
  if (!Array.isArray(found)) return [];
  return found.filter(
    (source): source is WeatherSource =>
      typeof source === 'object' &&
      source !== null &&
      typeof source.name === 'string' &&
      (source.format === null || typeof source.format === 'string') &&
      isDate(source.from) &&
      isDate(source.to) &&
      (parseDay(source.from) ?? 0) <= (parseDay(source.to) ?? 0),
  );
}
