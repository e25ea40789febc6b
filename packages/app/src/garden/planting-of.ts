import {
  formatDay,
  type Garden,
  type GardenBed,
  type GardenPlace,
  type GardenPlanting,
  type PlanForm,
} from '@neckfall/engine';
import type { Asked } from '../address/address-form.ts';
import { nameInAddress } from '../address/address-form.ts';
import { bedAsked, besideBed } from './bed-asked.ts';
import { isAt, isNear } from './near.ts';
import { newId } from './new-id.ts';
import { findOwn } from './own-onion.ts';

/** What a garden takes of a plan: as asked, with the onion, the start and the day that were taken. */
export type PlanToSave = {
  asked: Asked;
  plan: Pick<PlanForm, 'start' | 'startDay' | 'plantOutDay'>;
  class: Asked['class'];
  /** What the place and the plan are called. */
  placeName: string;
  name: string;
};

/**
 * The garden with this plan in it: in the place of the planting of this id, else at the end. All else of the garden
 * stays as it was.
 */
export function withPlan(
  garden: Garden,
  inPlaceOf: string | null,
  shown: PlanToSave,
): { garden: Garden; plantingId: string } {
  const { place, places } = placeAsked(garden, shown.asked, shown.placeName);
  const bed = bedAsked(garden, shown.asked);
  const before = garden.plantings.find(({ id }) => id === inPlaceOf);
  const id = before?.id ?? newId();
  // unknown fields of the planting stay, and the names its grower gave
  const planting: GardenPlanting = {
    ...before,
    ...plantingOf(shown, {
      id,
      name: before?.name ?? shown.name,
      placeId: place.id,
      learntFrom: before?.learntFrom ?? null,
      bed,
    }),
    ...ownOnionOf(garden, before, shown.asked),
  };
  const plantings = before
    ? garden.plantings.map((other) => (other === before ? planting : other))
    : [...garden.plantings, planting];
  return { garden: { ...garden, places, plantings }, plantingId: id };
}

/** The place of the garden that an address speaks of, else a new one, which then is among its places. */
export function placeAsked(
  garden: Garden,
  asked: Asked,
  name: string,
): { place: GardenPlace; places: GardenPlace[] } {
  const { at, elevation, hollow } = asked;
  const bed = bedAsked(garden, asked);
  const ofBed = bed && garden.places.find(({ id }) => id === bed.placeId);
  // the sun of a bed is no other place
  const sun = bed && bed.sunHours !== null ? (ofBed?.sunHours ?? null) : asked.sun;
  const known = [...(ofBed ? [ofBed] : []), ...garden.places].find(
    (place) =>
      isAt(place, at) &&
      isNear(place.elevationM, elevation, 1) &&
      isNear(place.sunHours, sun, 0.1) &&
      (place.frostHollow === true) === (hollow === true),
  );
  if (known) return { place: known, places: garden.places };
  const { latitudeDeg, longitudeDeg } = at ?? { latitudeDeg: 0, longitudeDeg: 0 };
  const place: GardenPlace = {
    id: newId(),
    name,
    latitudeDeg,
    longitudeDeg,
    elevationM: elevation,
    sunHours: sun,
    frostHollow: hollow,
  };
  return { place, places: [...garden.places, place] };
}

/** An onion of the grower's own goes through the address with its packet: where both are its own, its name says all. */
function ownOnionOf(
  garden: Garden,
  before: GardenPlanting | undefined,
  asked: Asked,
): Partial<GardenPlanting> | null {
  // a name that no address takes comes back by its packet alone
  const name = asked.cultivar ?? before?.cultivar ?? null;
  const own = name === null ? undefined : findOwn(garden.cultivars, name);
  if (!own || (asked.cultivar === null && nameInAddress(own.name) !== null)) return null;
  const isPacket =
    asked.class === own.class && asked.packetHours === own.packetHours && asked.packetDays === own.packetDays;
  const isBare = asked.class === null && asked.packetHours === null && asked.packetDays === null;
  if (!isPacket && !isBare) return asked.cultivar === null ? null : { cultivar: own.name };
  return { cultivar: own.name, class: null, packetHours: null, packetDays: null };
}

function plantingOf(
  { asked, plan, class: taken }: PlanToSave,
  {
    bed,
    ...names
  }: Pick<GardenPlanting, 'id' | 'name' | 'placeId' | 'learntFrom'> & { bed: GardenBed | null },
): GardenPlanting {
  const { start, startDay, plantOutDay } = plan;
  return {
    ...names,
    bedId: bed?.id ?? null,
    cultivar: asked.cultivar,
    class: asked.class ?? (asked.cultivar === null && asked.packetHours === null ? taken : null),
    packetHours: asked.packetHours,
    packetDays: asked.packetDays,
    start,
    startDate: formatDay(startDay),
    plantOutDate: plantOutDay === null ? null : formatDay(plantOutDay),
    rowDistanceCm: asked.rowDistance,
    plantDistanceCm: asked.plantDistance,
    plants: asked.plants,
    plantsPerStation: asked.perStation,
    setSizeMm: asked.setSize,
    setStore: asked.setStore,
    ...besideBed(asked, bed),
    nurseryTempC: asked.nurseryTemp,
    lampHours: asked.lampHours,
  };
}
