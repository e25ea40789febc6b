export { meanYear } from './mean-year.ts';
export type { WeatherSeries } from './weather-series.ts';
export { weatherYears } from './weather-years.ts';
