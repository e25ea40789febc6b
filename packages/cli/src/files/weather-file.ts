import { standardOffsetH } from '@neckfall/answers';
import {
  civilDate,
  type DailyRecord,
  type DayNumber,
  noCorrections,
  usableRecord,
  type WeatherQuantity,
  type WeatherReading,
} from '@neckfall/engine';
import { refuse } from '../refusal/refusal.ts';
import { readingOf } from './weather-reading.ts';
import { namedFile, readWeatherTexts } from './weather-texts.ts';

/** A record as the grower gave it. */
export type WeatherFile = {
  /** The file, or the files, that it is from. */
  path: string;
  /** The same as it is named to the reader, with the option that it was given by. */
  named: string;
  /** To plan with: without days whose values contradict each other. */
  record: DailyRecord;
  /** Days from here on were forecast, not measured; null: none. */
  forecastFrom: DayNumber | null;
  /** What the files were found to be; null: a garden kept it. */
  reading: WeatherReading | null;
  /** The same with its days in the standard time of a place, where hours in another time make them. */
  at(place: { timeZone: string; longitudeDeg: number }): WeatherFile;
};

const option = '--weather';
/** Columns of files whose days are made of readings. */
const ofReadings: readonly WeatherQuantity[] = ['time', 'hour', 'tempC', 'rainDayMm', 'rainSumMm', 'solarW'];

/** Reads the files of `--weather` as one record, or refuses them with exit code 3. */
export function readWeatherFiles(paths: readonly string[]): WeatherFile {
  const texts = paths.flatMap((path) => readWeatherTexts(path, namedFile(path, option)));
  const path = paths.join(', ');
  const read = (utcOffsetH: number | null): WeatherFile => {
    const reading = readingOf(texts, noCorrections, { utcOffsetH }, option);
    if (reading.typicalYear) {
      throw refuse('weather-typical', { field: option, exit: 3, values: namedFile(path, option) });
    }
    const file = {
      path,
      named: `${option} ${path}`,
      record: usableRecord(reading.record),
      forecastFrom: null,
      reading,
    };
    const hasReadings = reading.files.some(({ columns }) =>
      columns.some(({ as }) => ofReadings.includes(as)),
    );
    const at: WeatherFile['at'] = ({ timeZone, longitudeDeg }) =>
      hasReadings
        ? read(standardOffsetH(timeZone, longitudeDeg, civilDate(reading.record.firstDay).year))
        : { ...file, at };
    return { ...file, at };
  };
  return read(null);
}
