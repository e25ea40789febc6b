import { type DayNumber, formatDay, parseDay } from '../calendar/index.ts';
import {
  cutRecord,
  type DailyRecord,
  joinRecords,
  type Overlap,
  overlapOf,
  recordFields,
  type WeatherReading,
} from '../weather/index.ts';
import type { GardenWeather, WeatherSource } from './garden-weather.ts';
import { gardenWeatherOf, recordOfGarden } from './weather-record.ts';

/** Weather to be laid over what a garden keeps of a place. */
export type ComingWeather = {
  record: DailyRecord;
  sources: WeatherSource[];
  /** Days from here on are forecast, not measured; null: none. */
  forecastFrom: DayNumber | null;
  /** Of the weather that is made where the garden keeps none of the place. */
  id: string;
  placeId: string | null;
};

/** Where both say otherwise: `ask` gives the question back, `keep` holds what is there, `take` takes what comes. */
export type OverlapChoice = 'ask' | 'keep' | 'take';

/** The weather kept after a record is added, or what has to be asked first. */
export type JoinedWeather =
  | { weather: GardenWeather; question: null }
  /** Nothing is changed before it is answered. */
  | { weather: null; question: Overlap }
  /** Nothing is known in either. */
  | { weather: null; question: null };

/** What was read of files, as weather to be kept; a typical year is no weather that came, and gives null. */
export function comingOf(reading: WeatherReading, id: string, placeId: string | null): ComingWeather | null {
  if (reading.typicalYear) return null;
  const sources = reading.files.map(({ file, format, record }) => ({
    name: file,
    format,
    from: formatDay(record.firstDay),
    to: formatDay(record.firstDay + record.days - 1),
  }));
  return { record: reading.record, sources, forecastFrom: null, id, placeId };
}

/**
 * Lays new weather over what a garden keeps. Measured days take the place of forecast ones without a question, and no
 * forecast takes that of a measured day. Measured days that agree are one; where they differ, `choice` decides.
 */
export function joinWeather(
  kept: GardenWeather | null,
  coming: ComingWeather,
  choice: OverlapChoice,
): JoinedWeather {
  if (kept === null) {
    const weather = gardenWeatherOf(coming.record, coming);
    return { weather, question: null };
  }
  const [keptMeasured, keptForecast] = parted(recordOfGarden(kept), parseDay(kept.forecastFrom ?? ''));
  const [measured, forecast] = parted(coming.record, coming.forecastFrom);
  const overlap = overlapOf(keptMeasured, measured);
  if (choice === 'ask' && overlap.differing > 0) return { weather: null, question: overlap };
  const both = choice === 'keep' ? joinRecords(measured, keptMeasured) : joinRecords(keptMeasured, measured);
  // a forecast holds for days that nothing measured has reached yet
  const end = endOfKnown(both);
  const ahead = joinRecords(
    cutRecord(keptForecast, end, Number.POSITIVE_INFINITY),
    cutRecord(forecast, end, Number.POSITIVE_INFINITY),
  );
  const record = joinRecords(both, ahead);
  const weather = gardenWeatherOf(record, {
    id: kept.id,
    placeId: kept.placeId,
    sources: sourcesOf(kept.sources, coming.sources),
    forecastFrom: ahead.days > 0 ? ahead.firstDay : null,
  });
  // what other programs wrote beside it stays
  return { weather: weather && { ...kept, ...weather }, question: null };
}

function parted(record: DailyRecord, forecastFrom: DayNumber | null): [DailyRecord, DailyRecord] {
  const at = forecastFrom ?? Number.POSITIVE_INFINITY;
  return [cutRecord(record, Number.NEGATIVE_INFINITY, at), cutRecord(record, at, Number.POSITIVE_INFINITY)];
}

/** The day after the last of which something is known. */
function endOfKnown(record: DailyRecord): DayNumber {
  let { days } = record;
  while (days > 0 && !recordFields.some((field) => record.known[field][days - 1] === 1)) days--;
  return days === 0 ? Number.NEGATIVE_INFINITY : record.firstDay + days;
}

/** The same file twice is told once. */
function sourcesOf(kept: readonly WeatherSource[], coming: readonly WeatherSource[]): WeatherSource[] {
  const isSame = (a: WeatherSource, b: WeatherSource) =>
    a.name === b.name && a.from === b.from && a.to === b.to;
  return [...kept.filter((one) => !coming.some((other) => isSame(one, other))), ...coming];
}
