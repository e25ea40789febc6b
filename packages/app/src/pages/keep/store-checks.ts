import {
  type DayNumber,
  emptyGarden,
  formatDay,
  type Garden,
  type GardenPlanting,
  type Observation,
  parseDay,
} from '@neckfall/engine';
import { isAt } from '../../garden/near.ts';
import { newId } from '../../garden/new-id.ts';
import { withSeen } from '../../garden/seen.ts';
import { changeGarden } from '../../state/garden.ts';
import { asked } from '../../state/route.ts';

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

/** Plantings of the place that were lifted by a day, the first lifted first. */
export function liftedHere(
  garden: Garden,
  today: DayNumber,
): { planting: GardenPlanting; liftedOn: DayNumber }[] {
  const here = new Set(placesHere(garden));
  return garden.plantings
    .filter(({ placeId }) => placeId !== null && here.has(placeId))
    .flatMap((planting) => {
      const days = garden.observations
        .filter(({ plantingId, lifted }) => plantingId === planting.id && lifted === true)
        .map(({ date }) => parseDay(date))
        .filter((day) => day !== null);
      const liftedOn = Math.min(...days);
      return liftedOn <= today ? [{ planting, liftedOn }] : [];
    })
    .sort((a, b) => a.liftedOn - b.liftedOn);
}

/** Notes a look at what a planting has in store; what was not counted is left out. */
export function noteCheck(
  { id, name }: GardenPlanting,
  counts: Partial<Record<CheckField, number | null>>,
  today: DayNumber,
): Promise<boolean> {
  const entry: Observation = { id: newId(), plantingId: id, date: formatDay(today) };
  for (const field of checkFields) {
    const count = counts[field];
    if (count != null) entry[field] = count;
  }
  return changeGarden({ code: 'seen', name }, (now) => withSeen(now, id, entry));
}
