import { emptyGarden, type Garden, type Observation } from '@neckfall/engine';
import { isAt } from '../garden/near.ts';
import { asked } from './route.ts';

export const checkFields = ['soundCount', 'sproutedCount', 'rottenCount'] as const;
export type CheckField = (typeof checkFields)[number];

/** Whether an entry tells of a look at the store. */
export function isCheck(entry: Observation): boolean {
  return checkFields.some((field) => entry[field] !== undefined);
}

/** Ids of the places of the garden that the address speaks of. */
export function placesHere({ places }: Garden): string[] {
  return places.filter((place) => isAt(place, asked.value.at)).map(({ id }) => id);
}

/** What was ever looked at in store at the place, and nothing else of the garden: notes on standing crops plan no kitchen anew. */
export function lookedAtHere(garden: Garden | null): { garden: Garden; places: string[] } {
  if (!garden) return { garden: emptyGarden(), places: [] };
  const looked = new Set(garden.observations.filter(isCheck).map(({ plantingId }) => plantingId));
  const plantings = garden.plantings.filter(({ id }) => looked.has(id));
  const observations = garden.observations.filter(({ plantingId }) => looked.has(plantingId));
  const cultivars = looked.size > 0 ? garden.cultivars : [];
  return { garden: { ...emptyGarden(), cultivars, plantings, observations }, places: placesHere(garden) };
}
