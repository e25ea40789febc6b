import { emptyGarden, type Garden, type GardenBed, plantingInBed } from '@neckfall/engine';
import type { Asked } from '../address/address-form.ts';
import { newId } from './new-id.ts';
import { placeAsked } from './planting-of.ts';

/** A bed without its id and its place: what a form tells of it. */
export type BedSaid = Pick<
  GardenBed,
  | 'name'
  | 'lengthM'
  | 'widthM'
  | 'soil'
  | 'sunHours'
  | 'cover'
  | 'water'
  | 'watering'
  | 'flowLPerH'
  | 'waterSaltDsPerM'
  | 'fertility'
  | 'compostKgPerM2'
  | 'afterLegume'
  | 'soilPh'
  | 'feedProduct'
  | 'alliumYears'
  | 'whiteRot'
>;

export const nothingSaid: BedSaid = {
  name: '',
  lengthM: null,
  widthM: null,
  soil: null,
  sunHours: null,
  cover: null,
  water: null,
  watering: null,
  flowLPerH: null,
  waterSaltDsPerM: null,
  fertility: null,
  compostKgPerM2: null,
  afterLegume: null,
  soilPh: null,
  feedProduct: null,
  alliumYears: [],
  whiteRot: null,
};

/** The garden with one bed more, at a place of its own. */
export function withBed(garden: Garden, said: BedSaid, placeId: string): Garden {
  return { ...garden, beds: [...garden.beds, { ...said, id: newId(), placeId }] };
}

/** The same at the place of an address, which comes to the garden where it has none there. */
export function withBedHere(garden: Garden | null, said: BedSaid, asked: Asked, placeName: string): Garden {
  const before = garden ?? emptyGarden();
  const { place, places } = placeAsked(before, asked, placeName);
  return withBed({ ...before, places }, said, place.id);
}

/** What was said anew of a bed; all else of it stays. Nothing comes of it where the bed is gone meanwhile. */
export function withBedChanged(garden: Garden, id: string, said: BedSaid): Garden {
  return { ...garden, beds: garden.beds.map((bed) => (bed.id === id ? { ...bed, ...said } : bed)) };
}

/** Its plantings lie in none then; they go on in the same soil, under the same cover and on the same water. */
export function withoutBed(garden: Garden, id: string): Garden {
  return {
    ...garden,
    beds: garden.beds.filter((bed) => bed.id !== id),
    plantings: garden.plantings.map((planting) =>
      planting.bedId === id ? { ...plantingInBed(garden, planting), bedId: null } : planting,
    ),
  };
}

/** Years as a form has them: whole numbers with anything but digits between; null where one is no such year. */
export function readYears(text: string, [first, last]: readonly [number, number]): number[] | null {
  const years = text
    .split(/[^0-9]+/u)
    .filter((part) => part !== '')
    .map(Number);
  const areYears = years.every((year) => year >= first && year <= last) && !/[^\d\s,;.]/u.test(text);
  return areYears ? [...new Set(years)].sort((a, b) => a - b) : null;
}
