import type { Place } from '@neckfall/data';

/** So far from the nearest town a border may lie between. */
const sameCountryKm = 60;

/** ISO alpha-2 code of the country of a place; null for a point with no town near it. */
export function countryOf({ town, near }: Pick<Place, 'town' | 'near'>): string | null {
  if (town) return town.country;
  return near && near.distanceKm <= sameCountryKm ? near.town.country : null;
}
