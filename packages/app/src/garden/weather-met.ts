import {
  type Garden,
  type GardenWeather,
  keptWeatherFields,
  parseDay,
  recordOfGarden,
} from '@neckfall/engine';
import type { Asked } from '../address/address-form.ts';
import type { WeatherMet } from '../worker/site.ts';

/** Addresses hold four decimals of a degree. */
const nearDeg = 0.0001;

/** The weather that a garden keeps of a point: beds of one place have the same, whatever sun they get. */
export function weatherNear(garden: Garden, at: NonNullable<Asked['at']>): GardenWeather | null {
  const here = garden.places.filter(
    ({ latitudeDeg, longitudeDeg }) =>
      Math.abs(latitudeDeg - at.latitudeDeg) <= nearDeg &&
      Math.abs(longitudeDeg - at.longitudeDeg) <= nearDeg,
  );
  return garden.weather.find(({ placeId }) => here.some(({ id }) => id === placeId)) ?? null;
}

/** Of the weather kept, what was known by the end of a day: days measured, and those of a forecast made by then. */
export function weatherMet(kept: GardenWeather, today: number): WeatherMet | null {
  const firstDay = parseDay(kept.firstDate) ?? 0;
  const forecastFrom = kept.forecastFrom === null ? null : parseDay(kept.forecastFrom);
  const isForecastKnown = forecastFrom !== null && forecastFrom <= today + 1;
  const days = isForecastKnown ? kept.tempMinC.length : Math.min(kept.tempMinC.length, today + 1 - firstDay);
  if (days <= 0) return null;
  const met = { ...kept };
  for (const field of keptWeatherFields) met[field] = kept[field].slice(0, days);
  return { key: `${kept.firstDate} ${markOf(met)}`, record: recordOfGarden(met), lastStart: today };
}

/** A mark of the values, like no other's for as long as anyone will look (FNV-1a, 32 bits, over their hundredths). */
function markOf(weather: GardenWeather): string {
  let mark = 0x811c9dc5;
  for (const field of keptWeatherFields) {
    for (const value of weather[field]) {
      mark = Math.imul(mark ^ (value === null ? 0x7fffffff : Math.round(value * 100)), 0x01000193);
    }
  }
  return `${weather.tempMinC.length} ${mark >>> 0}`;
}
