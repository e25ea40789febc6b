import type { Garden, GardenBed, GardenPlace, GardenPlanting } from '@neckfall/engine';
import type { Asked } from '../address/address-form.ts';
import { isAt } from './near.ts';

type AtPlace = { plantings: GardenPlanting[]; beds: GardenBed[] };

/**
 * Plantings and beds under their places, in the order of the garden; places that have nothing but weather, and the one
 * that the address names, too. `lost` are those whose place it does not have.
 */
export function byPlace(
  { places, plantings, beds, weather }: Pick<Garden, 'places' | 'plantings' | 'beds' | 'weather'>,
  at: Asked['at'] = null,
): { placed: ({ place: GardenPlace } & AtPlace)[]; lost: AtPlace } {
  const empty = (): AtPlace => ({ plantings: [], beds: [] });
  const groups = new Map(places.map((place) => [place.id, { place, ...empty() }]));
  const lost = empty();
  const groupOf = (placeId: string | null) => (placeId === null ? undefined : groups.get(placeId)) ?? lost;
  for (const planting of plantings) groupOf(planting.placeId).plantings.push(planting);
  for (const bed of beds) groupOf(bed.placeId).beds.push(bed);
  const withWeather = new Set(weather.map(({ placeId }) => placeId));
  const placed = [...groups.values()].filter(
    ({ place, plantings, beds }) =>
      plantings.length > 0 ||
      beds.length > 0 ||
      withWeather.has(place.id) ||
      (at !== null && isAt(place, at)),
  );
  return { placed, lost };
}
