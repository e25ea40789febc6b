import {
  type ComingWeather,
  type Garden,
  type GardenWeather,
  joinWeather,
  type Overlap,
  weatherNear,
} from '@neckfall/engine';
import type { Asked } from '../address/address-form.ts';
import { newId } from './new-id.ts';
import { placeAsked } from './planting-of.ts';

type Point = NonNullable<Asked['at']>;

/** Weather that may be laid over what is kept, whatever it will be called there. */
export type Coming = Pick<ComingWeather, 'record' | 'sources' | 'forecastFrom'>;

/**
 * The garden with weather of a place laid over what it has, its own days standing where both say otherwise unless the
 * new ones are taken. A place that is not among those of the garden comes to them.
 */
export function withWeather(
  garden: Garden,
  asked: Asked,
  placeName: string,
  coming: Coming,
  choice: 'keep' | 'take',
): Garden {
  const before = asked.at && weatherNear(garden, asked.at);
  const { place, places } = before ? { place: null, ...garden } : placeAsked(garden, asked, placeName);
  const { weather } = joinWeather(before, { ...coming, id: newId(), placeId: place?.id ?? null }, choice);
  if (weather === null) return garden;
  return { ...garden, places, weather: [...garden.weather.filter((other) => other !== before), weather] };
}

/** The garden without the weather of a point. */
export function withoutWeather(garden: Garden, at: Point): Garden {
  const before = weatherNear(garden, at);
  return { ...garden, weather: garden.weather.filter((other) => other !== before) };
}

/** Where measured days of a garden and of what comes say otherwise. */
export function questionOf(kept: GardenWeather | null, coming: Coming): Overlap | null {
  return joinWeather(kept, { ...coming, id: '', placeId: null }, 'ask').question;
}
