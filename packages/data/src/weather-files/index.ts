export { type OpenedWeather, openWeatherFile } from './open-weather-file.ts';
