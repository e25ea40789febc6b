import { isGreenLot } from '@neckfall/answers';
import { classOfType, greenSpacing, type KeepLot } from '@neckfall/engine';
import type { Asked } from '../address/address-form.ts';
import { noOnion } from '../address/no-onion.ts';

/** Lots as they are started, one after the other. */
export function inTurn(lots: readonly KeepLot[]): KeepLot[] {
  return [...lots].sort((a, b) => a.plan.startDay - b.plan.startDay);
}

/** What an address asks to show the season of a lot: packets of its class hold its type at its start. */
export function askedOfLot(lot: KeepLot): Partial<Asked> {
  const { plan, need } = lot;
  return {
    ...noOnion,
    class: classOfType[plan.type],
    start: plan.start,
    date: plan.startDay,
    plantOut: null,
    plants: need.plants,
    planting: null,
    bed: null,
    ...(isGreenLot(lot) && {
      rowDistance: greenSpacing.rowCm,
      plantDistance: greenSpacing.plantCm,
      perStation: greenSpacing.perStation,
    }),
  };
}
