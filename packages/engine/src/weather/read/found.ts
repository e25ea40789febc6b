import type { DayNumber } from '../../calendar/index.ts';
import type { DailyRecord, RecordField } from '../daily-record.ts';
import type { MissingCode } from '../missing-codes.ts';

/** What a file of weather can be found to be, by its content. */
export const weatherFormats = [
  'own-table',
  'ghcn-daily-fixed',
  'ghcn-daily-table',
  'ncei-daily-summaries',
  'gsod-fixed',
  'gsod-table',
  'nasa-power-table',
  'nasa-power-json',
  'open-meteo-table',
  'open-meteo-json',
  'epw',
  'tmy3',
  'dwd-daily',
  'environment-canada-daily',
  'bom-daily',
  'inmet-hourly',
] as const;
/** One of {@link weatherFormats}. */
export type WeatherFormat = (typeof weatherFormats)[number];

/**
 * What a column of a record holds. `rainMm` is the amount since the row before; a counter goes on rising, until it is
 * set back at midnight (`rainDayMm`), or seldom or never (`rainSumMm`). `tempC` is a reading, of which the day's least
 * and most are taken where no column gives these.
 */
export const weatherQuantities = [
  'date',
  'time',
  'year',
  'month',
  'day',
  'hour',
  'tempMinC',
  'tempMaxC',
  'tempC',
  'rainMm',
  'rainDayMm',
  'rainSumMm',
  'solarMJ',
  'solarW',
] as const;
/** One of {@link weatherQuantities}. */
export type WeatherQuantity = (typeof weatherQuantities)[number];

/** In which order a date is written: year, month and day. */
export type DateOrder = 'ymd' | 'dmy' | 'mdy';

/** What a reader says of a file that was guessed otherwise. */
export type WeatherCorrections = {
  /** By the name a column has in the file; `as` null: not used. `unit` null: as guessed. */
  columns: readonly { column: string; as: WeatherQuantity | null; unit: string | null }[];
  dateOrder: DateOrder | null;
  /** Hours that the place's standard time is ahead of UTC, −12…14. */
  utcOffsetH: number | null;
};

/** Everything as it was found. */
export const noCorrections: WeatherCorrections = { columns: [], dateOrder: null, utcOffsetH: null };

/** A column with what it was taken for and its unit, if one is known. */
export type FoundColumn = { column: string; as: WeatherQuantity; unit: string | null };

/** The station a file names, as far as it does. */
export type FoundStation = {
  name: string | null;
  latitudeDeg: number | null;
  longitudeDeg: number | null;
  elevationM: number | null;
};

/** A value that was left out or is doubtful, and why: never swallowed. Beyond the first hundred they are counted alone. */
export type FlaggedValue = {
  day: DayNumber;
  field: RecordField;
  value: number;
  why: 'quality-flag' | 'out-of-range' | 'min-above-max' | 'outlier' | 'accumulated' | 'stuck';
  /** Whether it was left out; else it stands, and is doubtful. */
  leftOut: boolean;
};

/** One file, as it was found to be. */
export type FoundFile = {
  file: string;
  format: WeatherFormat;
  encoding: string;
  station: FoundStation | null;
  /** Other stations in the same file, by name: it is read for one alone, a table for that with the most rows. */
  otherStations: string[];
  /** Months of different years put together: no weather that came. Its days are those of 2001. */
  typicalYear: boolean;
  timeBase: 'local-standard' | 'utc' | 'as-printed';
  /** By how much stamps were moved to the standard time of the place, and where that is taken from; else null. */
  utcOffset?: { offsetH: number; from: 'correction' | 'place' | 'longitude' | 'file' } | null;
  /** Order of day, month and year where the file's dates leave it open or it was guessed; null: no question. */
  dateOrder: DateOrder | null;
  columns: FoundColumn[];
  /** Columns of the file that were not used, by name. */
  unused: string[];
  /** Numbers that stood for “not measured”, and were left out. */
  missingCodes: MissingCode[];
  record: DailyRecord;
  /** Rows of a table that were passed over, for no day that exists could be read in them; absent: none. */
  passedOver?: { rows: number; firstLine: number };
  /** Days that have a row, whatever stands in it. */
  daysWithRow: number;
  flagged: FlaggedValue[];
  /** Flagged values in all. */
  flaggedCount: number;
};

/** Why a file is refused: one line. `line` 1 for the first; null where the issue is with the whole file. */
export type WeatherIssue = {
  code:
    | 'not-weather'
    | 'no-dates'
    | 'no-values'
    | 'no-days'
    | 'bad-date'
    | 'too-many-columns'
    | 'too-many-lines'
    | 'long-cell'
    | 'bad-json'
    | 'unknown-column'
    | 'unit-unknown'
    | 'typical-beside-real';
  line: number | null;
  field: string;
  received: string;
  expected: string;
  /** Issues besides this one, where all were looked for. */
  more?: number;
};

export type FileReading = { ok: true; found: FoundFile } | { ok: false; issue: WeatherIssue };

/** Text of a file, and how it was encoded. */
export type WeatherText = { file: string; text: string; encoding: string };

/** What is known of the place a record is read for; null: nothing. */
export type ReadingPlace = { utcOffsetH: number | null };

/** One format: told by content, never by name. */
export type WeatherFormatReader = {
  format: WeatherFormat;
  /** Whether a file begins as those of this format do. */
  knows(text: string): boolean;
  read(file: WeatherText, corrections: WeatherCorrections, place: ReadingPlace): FileReading;
};
