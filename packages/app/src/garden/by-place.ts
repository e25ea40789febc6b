import type { Garden, GardenPlace, GardenPlanting } from '@neckfall/engine';

/** Plantings under their places, in the order of the garden; `lost` are those whose place it does not have. */
export function byPlace({ places, plantings }: Pick<Garden, 'places' | 'plantings'>): {
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
  return { placed: [...groups.values()].filter(({ plantings }) => plantings.length > 0), lost };
}
