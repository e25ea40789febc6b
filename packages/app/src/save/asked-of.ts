import { type Garden, type GardenPlanting, parseDay } from '@neckfall/engine';
import type { Asked } from '../state/address-form.ts';
import { ownOnion } from './own-onion.ts';

/** What an address asks to show a planting of a garden; its place only where the garden has it. */
export function askedOf(garden: Garden, planting: GardenPlanting): Partial<Asked> {
  const place = garden.places.find(({ id }) => id === planting.placeId);
  const own = ownOnion(garden, planting);
  const { cover, water, setStore } = planting;
  return {
    ...(place && {
      at: { latitudeDeg: place.latitudeDeg, longitudeDeg: place.longitudeDeg },
      name: place.name,
      elevation: place.elevationM === null ? null : Math.round(place.elevationM),
      sun: place.sunHours,
      hollow: place.frostHollow === true ? true : null,
    }),
    // an onion of the grower's own is what its packet says
    cultivar: own ? null : planting.cultivar,
    class: own ? own.class : planting.class,
    packetHours: own ? own.packetHours : planting.packetHours,
    packetDays: own ? own.packetDays : planting.packetDays,
    start: planting.start,
    date: dayOf(planting.startDate),
    plantOut: dayOf(planting.plantOutDate),
    rowDistance: planting.rowDistanceCm,
    plantDistance: planting.plantDistanceCm,
    plants: planting.plants,
    setSize: planting.setSizeMm,
    setStore: setStore === 'warm' ? setStore : null,
    cover: cover === 'none' ? null : cover,
    water: water === 'rain' ? water : null,
    soil: planting.soil,
    nurseryTemp: planting.nurseryTempC,
    lampHours: planting.lampHours,
  };
}

function dayOf(date: string | null): number | null {
  return date === null ? null : parseDay(date);
}
