import { type DayNumber, parseDay } from '../calendar/index.ts';
import { cutRecord, type DailyRecord } from '../weather/index.ts';
import type { Garden } from './garden.ts';
import type { GardenWeather } from './garden-weather.ts';
import { recordOfGarden } from './weather-record.ts';

/** Points as near as this are one place, degrees: addresses hold four decimals. */
const nearDeg = 0.0001;

type Point = { latitudeDeg: number; longitudeDeg: number };

/** The weather that a garden keeps of a point: beds of one place have the same, whatever sun they get. Null: none. */
export function weatherNear(
  { places, weather }: Pick<Garden, 'places' | 'weather'>,
  at: Point,
): GardenWeather | null {
  const here = places.filter(
    ({ latitudeDeg, longitudeDeg }) =>
      Math.abs(latitudeDeg - at.latitudeDeg) <= nearDeg &&
      Math.abs(longitudeDeg - at.longitudeDeg) <= nearDeg,
  );
  return weather.find(({ placeId }) => here.some(({ id }) => id === placeId)) ?? null;
}

/**
 * Of the weather kept, what was known by the end of a day: days measured, and those of a forecast made by then. Null
 * where there are none.
 */
export function weatherMet(kept: GardenWeather, today: DayNumber): DailyRecord | null {
  const record = recordOfGarden(kept);
  const forecastFrom = kept.forecastFrom === null ? null : parseDay(kept.forecastFrom);
  const isForecastKnown = forecastFrom !== null && forecastFrom <= today + 1;
  const met = isForecastKnown ? record : cutRecord(record, Number.NEGATIVE_INFINITY, today + 1);
  return met.days > 0 ? met : null;
}
