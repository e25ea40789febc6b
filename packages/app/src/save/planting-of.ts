import {
  emptyGarden,
  formatDay,
  type Garden,
  type GardenPlace,
  type GardenPlanting,
  type Plan,
} from '@neckfall/engine';
import type { Asked } from '../state/address-form.ts';
import { ownOnion } from './own-onion.ts';

/** What is kept of a plan: as asked, with the onion, the start and the day that were taken. */
export type PlanToKeep = {
  asked: Asked;
  plan: Pick<Plan, 'start' | 'startDay' | 'plantOutDay'>;
  class: Asked['class'];
  /** What the place and the plan are called. */
  placeName: string;
  name: string;
};

/** A garden opened before, and which of its plantings is on the page. */
export type OpenedGarden = { garden: Garden; file: string; plantingId: string | null };

/**
 * The garden with this plan in it: in the place of the planting that was opened, else at the end. All else of an opened
 * garden stays as it was.
 */
export function withPlan(
  opened: OpenedGarden | null,
  keep: PlanToKeep,
): { garden: Garden; plantingId: string } {
  const garden = opened?.garden ?? emptyGarden();
  const place = placeOf(garden, keep);
  const places = garden.places.some(({ id }) => id === place.id) ? garden.places : [...garden.places, place];
  const before = garden.plantings.find(({ id }) => id === opened?.plantingId);
  const id = before?.id ?? freeId('planting', garden.plantings);
  // unknown fields of the planting stay, and the names its grower gave
  const planting: GardenPlanting = {
    ...before,
    ...plantingOf(keep, { id, name: before?.name ?? keep.name, placeId: place.id }),
    ...(before && ownOnionOf(garden, before, keep.asked)),
  };
  const plantings = before
    ? garden.plantings.map((other) => (other === before ? planting : other))
    : [...garden.plantings, planting];
  return { garden: { ...garden, places, plantings }, plantingId: id };
}

/** The place of the garden at this point, else a new one. */
function placeOf(garden: Garden, { asked, placeName }: PlanToKeep): GardenPlace {
  const { at, elevation, sun } = asked;
  const latitudeDeg = at?.latitudeDeg ?? 0;
  const longitudeDeg = at?.longitudeDeg ?? 0;
  return (
    garden.places.find(
      (place) =>
        isNear(place.latitudeDeg, latitudeDeg, nearDeg) &&
        isNear(place.longitudeDeg, longitudeDeg, nearDeg) &&
        isNear(place.elevationM, elevation, 1) &&
        isNear(place.sunHours, sun, 0.1) &&
        (place.frostHollow === true) === (asked.hollow === true),
    ) ?? {
      id: freeId('place', garden.places),
      name: placeName,
      latitudeDeg,
      longitudeDeg,
      elevationM: elevation,
      sunHours: sun,
      frostHollow: asked.hollow,
    }
  );
}

/** Addresses hold four decimals of a degree. */
const nearDeg = 0.0001;

function isNear(a: number | null, b: number | null, within: number): boolean {
  return a === null || b === null ? a === b : Math.abs(a - b) <= within;
}

/** An onion of the grower's own goes through the address as its packet: its name stays while the packet does. */
function ownOnionOf(garden: Garden, before: GardenPlanting, asked: Asked): Partial<GardenPlanting> | null {
  const own = ownOnion(garden, before);
  const isSame =
    own &&
    asked.cultivar === null &&
    asked.class === own.class &&
    asked.packetHours === own.packetHours &&
    asked.packetDays === own.packetDays;
  if (!isSame) return null;
  const { cultivar, class: printed, packetHours, packetDays } = before;
  return { cultivar, class: printed, packetHours, packetDays };
}

function plantingOf(
  { asked, plan, class: taken }: PlanToKeep,
  names: { id: string; name: string; placeId: string },
): GardenPlanting {
  const { start, startDay, plantOutDay } = plan;
  return {
    ...names,
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
    setSizeMm: asked.setSize,
    setStore: asked.setStore,
    cover: asked.cover,
    water: asked.water,
    soil: asked.soil,
    nurseryTempC: asked.nurseryTemp,
    lampHours: asked.lampHours,
  };
}

function freeId(kind: string, among: readonly { id: string }[]): string {
  for (let number = among.length + 1; ; number++) {
    const id = `${kind}-${number}`;
    if (!among.some((entry) => entry.id === id)) return id;
  }
}
