export { WeatherDays } from './weather-days.tsx';
export { mostDrawn, weatherDaysOf } from './weather-days-of.ts';
