import {
  classOfType,
  emptyGarden,
  formatDay,
  type GardenPlanting,
  type KeepLot,
  plantOutDayOf,
} from '@neckfall/engine';
import { askedOfLot } from '../../garden/lot-asked.ts';
import { isAt } from '../../garden/near.ts';
import { withPlan } from '../../garden/planting-of.ts';
import { changeGarden, gardenStanding } from '../../state/garden.ts';
import { placeName } from '../../state/place.ts';
import { asked } from '../../state/route.ts';

/** The planting of the garden that is this lot; undefined where it has none. */
export function keptLot({ plan, need }: KeepLot): GardenPlanting | undefined {
  const garden = gardenStanding.value?.garden;
  const here = garden?.places.filter((place) => isAt(place, asked.value.at)).map(({ id }) => id) ?? [];
  return garden?.plantings.find(
    (planting) =>
      here.includes(planting.placeId ?? '') &&
      planting.start === plan.start &&
      planting.startDate === formatDay(plan.startDay) &&
      planting.class === classOfType[plan.type] &&
      planting.plants === need.plants,
  );
}

/** Puts a lot among the plans of the garden. */
export function keepLot(lot: KeepLot, name: string): Promise<boolean> {
  const { plan } = lot;
  return changeGarden({ code: 'added', name }, (now) => {
    const { garden } = withPlan(now ?? emptyGarden(), null, {
      asked: { ...asked.value, ...askedOfLot(lot) },
      plan: { start: plan.start, startDay: plan.startDay, plantOutDay: plantOutDayOf(plan) },
      class: classOfType[plan.type],
      placeName: asked.value.name ?? placeName.value,
      name,
    });
    return garden;
  });
}
