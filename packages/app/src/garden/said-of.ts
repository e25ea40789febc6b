import { type Garden, type GardenPlanting, type PlanForm, plantingInBed } from '@neckfall/engine';
import type { Asked } from '../address/address-form.ts';

type Field = keyof PlanForm;

/** What of an address, and of a planting with its bed, says each field of a plan. */
const ofAddress: Readonly<Partial<Record<keyof Asked, readonly Field[]>>> = {
  class: ['type', 'traits'],
  cultivar: ['type', 'traits'],
  packetHours: ['type', 'traits'],
  start: ['start'],
  date: ['startDay'],
  plantOut: ['plantOutDay'],
  rowDistance: ['densityPerM2'],
  plantDistance: ['densityPerM2'],
  perStation: ['densityPerM2'],
  setSize: ['setSizeMm'],
  setStore: ['setStore'],
  cover: ['cover'],
  water: ['water'],
  sun: ['sunHours'],
  soil: ['soil'],
  nurseryTemp: ['nurseryTempC'],
  lampHours: ['lampHours'],
};
/** What is usual stands in no address; a planting may say it all the same. */
const ofPlanting = ['setStore', 'cover', 'water', 'soil'] as const satisfies readonly (keyof GardenPlanting &
  Field)[];

/** Fields of the plan that the grower said; all others are what is usual. */
export function saidFields(asked: Asked, garden: Garden | null, planting: GardenPlanting | null): Field[] {
  const said = Object.entries(ofAddress).flatMap(([name, fields]) =>
    asked[name as keyof Asked] === null ? [] : fields,
  );
  const inBed = garden && planting && plantingInBed(garden, planting);
  const kept = ofPlanting.filter((field) => inBed && inBed[field] !== null);
  return [...new Set([...said, ...kept])];
}
