export { applyRecord } from './apply-record.ts';
export { type DailyRecord, emptyRecord, type RecordField, recordFields } from './daily-record.ts';
export { type FrostDate, type FrostStatistics, frostStatistics } from './frost-statistics.ts';
export { meanYear } from './mean-year.ts';
export { type DailyCsvIssue, type DailyCsvResult, type MissingCode, readDailyCsv } from './read-daily-csv.ts';
export { recordedYears } from './recorded-years.ts';
export {
  checkWeather,
  heavyRainMm,
  measuredDays,
  type WeatherFinding,
  type WeatherImpossible,
} from './weather-findings.ts';
export type { WeatherSeries } from './weather-series.ts';
export { weatherYears } from './weather-years.ts';
