import type { Garden, GardenPlace, GardenPlanting } from '@neckfall/engine';

/**
 * Plantings under their places, in the order of the garden, and places that have weather alone; `lost` are plantings
 * whose place it does not have.
 */
export function byPlace({ places, plantings, weather }: Pick<Garden, 'places' | 'plantings' | 'weather'>): {
  placed: { place: GardenPlace; plantings: GardenPlanting[] }[];
  lost: GardenPlanting[];
} {
  const groups = new Map(places.map((place) => [place.id, { place, plantings: [] as GardenPlanting[] }]));
  const lost: GardenPlanting[] = [];
  for (const planting of plantings) {
    const { placeId } = planting;
    const group = placeId === null ? undefined : groups.get(placeId);
    (group?.plantings ?? lost).push(planting);
  }
  const withWeather = new Set(weather.map(({ placeId }) => placeId));
  const placed = [...groups.values()].filter(
    ({ place, plantings }) => plantings.length > 0 || withWeather.has(place.id),
  );
  return { placed, lost };
}
