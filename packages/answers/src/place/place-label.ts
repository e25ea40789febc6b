import type { Place, Town } from '@neckfall/data';
import type { Speaker } from '@neckfall/words';

/** "Lyon, France", but "Singapore"; in the United States with the state, by which people tell towns apart. */
export function townLabel(town: Town, { say, country }: Speaker): string {
  const { name, region } = town;
  const values = { name, country: country(town.country) };
  if (name === values.country) return name;
  return town.country === 'US' && region !== null
    ? say('place.in-region', { ...values, region })
    : say('place.in-country', values);
}

type Point = { latitudeDeg: number; longitudeDeg: number };

/** "45.76° N, 4.84° E, near Lyon, France": swapped coordinates show. */
export function pointLabel(point: Point, near: Town, speaker: Speaker): string {
  return speaker.say('place.near', { ...coordinateWords(point, speaker), town: townLabel(near, speaker) });
}

/** "45.76° N" and "4.84° E". */
export function coordinateWords({ latitudeDeg, longitudeDeg }: Point, { say, number }: Speaker) {
  return {
    latitude: say('place.latitude', {
      degrees: number(Math.abs(latitudeDeg), 2),
      side: latitudeDeg < 0 ? 'south' : 'north',
    }),
    longitude: say('place.longitude', {
      degrees: number(Math.abs(longitudeDeg), 2),
      side: longitudeDeg < 0 ? 'west' : 'east',
    }),
  };
}

export function placeLabel(place: Place, speaker: Speaker): string {
  if (place.town) return townLabel(place.town, speaker);
  return place.near ? pointLabel(place, place.near.town, speaker) : '';
}
