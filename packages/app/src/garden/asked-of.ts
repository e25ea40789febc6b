import {
  bedOf,
  type Garden,
  type GardenPlace,
  type GardenPlanting,
  parseDay,
  planDefaults,
  plantingInBed,
} from '@neckfall/engine';
import { writeAddress } from '../address/address.ts';
import type { Asked } from '../address/address-form.ts';
import { idInAddress, nameInAddress } from '../address/address-form.ts';
import { askedOfOwn, ownOnion } from './own-onion.ts';

/** What an address asks to show a planting of a garden; its place only where the garden has it. */
export function askedOf(garden: Garden, kept: GardenPlanting): Partial<Asked> {
  const planting = plantingInBed(garden, kept);
  const place = garden.places.find(({ id }) => id === planting.placeId);
  const bed = bedOf(garden, planting);
  const own = ownOnion(garden, planting);
  const { cover, water, setStore } = planting;
  return {
    planting: idInAddress(planting.id),
    ...(place && askedOfPlace(place)),
    ...(place && bed && bed.sunHours !== null && { sun: bed.sunHours }),
    bed: bed && idInAddress(bed.id),
    cultivar: planting.cultivar === null ? null : nameInAddress(planting.cultivar),
    // a packet said of the planting itself comes before that of its onion
    ...(own && !saysPacket(planting)
      ? askedOfOwn(own)
      : { class: planting.class, packetHours: planting.packetHours, packetDays: planting.packetDays }),
    start: planting.start,
    date: dayOf(planting.startDate),
    plantOut: dayOf(planting.plantOutDate),
    rowDistance: planting.rowDistanceCm,
    plantDistance: planting.plantDistanceCm,
    perStation: planting.plantsPerStation,
    plants: planting.plants,
    setSize: planting.setSizeMm,
    setStore: setStore === 'warm' ? setStore : null,
    cover: cover === 'none' ? null : cover,
    water: water === 'rain' ? water : null,
    // a planting may have to say the usual where its bed says otherwise
    soil: bed && planting.soil === planDefaults.soil ? null : planting.soil,
    nurseryTemp: planting.nurseryTempC,
    lampHours: planting.lampHours,
  };
}

/** Whether an address asks for a planting as the garden has it: what is left open there may be worked out meanwhile. */
export function isAskedFor(garden: Garden, planting: GardenPlanting, asked: Asked): boolean {
  const asks = { ...asked, ...askedOf(garden, planting) };
  return writeAddress('season', asks) === writeAddress('season', asked);
}

/** The planting of a garden that an address names; ids are compared as they are kept. */
export function plantingAsked(
  garden: Garden,
  { planting: id }: Pick<Asked, 'planting'>,
): GardenPlanting | undefined {
  return id === null ? undefined : garden.plantings.find((planting) => planting.id === id);
}

/** What an address says of a place of a garden. */
export function askedOfPlace(
  place: GardenPlace,
): Pick<Asked, 'at' | 'name' | 'elevation' | 'sun' | 'hollow'> {
  return {
    at: { latitudeDeg: place.latitudeDeg, longitudeDeg: place.longitudeDeg },
    name: nameInAddress(place.name),
    elevation: place.elevationM === null ? null : Math.round(place.elevationM),
    sun: place.sunHours,
    hollow: place.frostHollow === true ? true : null,
  };
}

function saysPacket({ class: printed, packetHours, packetDays }: GardenPlanting): boolean {
  return printed !== null || packetHours !== null || packetDays !== null;
}

function dayOf(date: string | null): number | null {
  return date === null ? null : parseDay(date);
}
