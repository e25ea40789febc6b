export { type AgainstUsual, againstUsual } from './against-usual.ts';
export { applyRecord } from './apply-record.ts';
export { believable } from './believable.ts';
export { type DailyRecord, emptyRecord, type RecordField, recordFields } from './daily-record.ts';
export { type FrostDate, type FrostStatistics, frostStatistics } from './frost-statistics.ts';
export { meanYear } from './mean-year.ts';
export type { MissingCode } from './missing-codes.ts';
export {
  type DateOrder,
  type FlaggedValue,
  type FoundColumn,
  type FoundFile,
  type FoundStation,
  noCorrections,
  type ReadingPlace,
  type WeatherCorrections,
  type WeatherFormat,
  type WeatherIssue,
  type WeatherQuantity,
  type WeatherText,
  weatherFormats,
  weatherQuantities,
} from './read/found.ts';
export { joinRecords } from './read/join-records.ts';
export { type Difference, type Overlap, overlapOf } from './read/overlap.ts';
export { readWeather, type WeatherReading, type WeatherResult } from './read/read-weather.ts';
export { weatherFormatOf } from './read/readers.ts';
export { totalsOf, type WeatherTotals } from './read/totals.ts';
export { type DailyCsvIssue, type DailyCsvResult, readDailyCsv } from './read-daily-csv.ts';
export { type RecordGap, recordGaps } from './record-gaps.ts';
export { recordedYears } from './recorded-years.ts';
export { cutRecord, usableRecord } from './usable-record.ts';
export {
  checkWeather,
  heavyRainMm,
  measuredDays,
  type WeatherCheck,
  type WeatherFinding,
  type WeatherImpossible,
} from './weather-findings.ts';
export type { WeatherSeries } from './weather-series.ts';
export { weatherYears } from './weather-years.ts';
