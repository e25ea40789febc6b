import {
  type DayNumber,
  formatDay,
  type Garden,
  type GardenPlanting,
  type Observation,
  parseDay,
} from '@neckfall/engine';
import { newId } from '../../garden/new-id.ts';
import { withSeen } from '../../garden/seen.ts';
import { changeGarden } from '../../state/garden.ts';
import { type CheckField, checkFields, placesHere } from '../../state/looked-at.ts';

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
