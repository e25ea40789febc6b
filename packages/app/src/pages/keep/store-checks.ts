import { findCultivar } from '@neckfall/data';
import {
  type DayNumber,
  formatDay,
  type Garden,
  type GardenPlanting,
  type Observation,
  type OwnCultivar,
  parseDay,
} from '@neckfall/engine';
import { isAt } from '../../garden/near.ts';
import { newId } from '../../garden/new-id.ts';
import { ownOnion } from '../../garden/own-onion.ts';
import { withSeen } from '../../garden/seen.ts';
import { changeGarden } from '../../state/garden.ts';
import { asked } from '../../state/route.ts';

export const checkFields = ['soundCount', 'sproutedCount', 'rottenCount'] as const;
export type CheckField = (typeof checkFields)[number];

/** Whether an entry tells of a look at the store. */
export function isCheck(entry: Observation): boolean {
  return checkFields.some((field) => entry[field] !== undefined);
}

/** Plantings of the place that were lifted by a day, the first lifted first. */
export function liftedHere(
  garden: Garden,
  today: DayNumber,
): { planting: GardenPlanting; liftedOn: DayNumber }[] {
  const here = new Set(garden.places.filter((place) => isAt(place, asked.value.at)).map(({ id }) => id));
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

/** What is known of the onion of a planting: how long it keeps, else what tells its kind; null where neither is. */
export function storedOnion(garden: Garden, planting: GardenPlanting): OwnCultivar | null {
  const own = ownOnion(garden, planting);
  const sold = planting.cultivar === null || own ? null : findCultivar(planting.cultivar).match;
  const onion = {
    id: planting.id,
    name: planting.name,
    class: planting.class ?? own?.class ?? sold?.class ?? null,
    packetHours: planting.packetHours ?? own?.packetHours ?? null,
    packetDays: planting.packetDays ?? own?.packetDays ?? null,
    keepsMonths: own?.keepsMonths ?? sold?.keepsMonths ?? null,
  };
  const isKnown = onion.keepsMonths !== null || onion.class !== null || onion.packetHours !== null;
  return isKnown ? onion : null;
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
