export type { WeatherSeries } from './weather-series.ts';
