import { type Fertility, fertilities, type WateringWay, wateringWays } from '../bed/index.ts';
import { type PlanForm, planFields } from '../season/index.ts';
import type { Garden } from './garden.ts';
import { gardenRanges } from './garden.ts';
import type { GardenPlanting } from './planting.ts';
import {
  emptied,
  isNumberIn,
  nameAndId,
  numberOrNull,
  type RestoreEntry,
  type Tell,
  textOrNull,
  type Unknown,
  wordOrNull,
} from './restoring.ts';

/** A bed of a place, in which plantings lie; null where nothing was said and the usual holds. */
export type GardenBed = Unknown & {
  id: string;
  name: string;
  /** Id of a place of the same garden. */
  placeId: string | null;
  lengthM: number | null;
  widthM: number | null;
  soil: PlanForm['soil'] | null;
  /** Direct sun on it at midsummer, h; null: as its place. */
  sunHours: number | null;
  cover: PlanForm['cover'] | null;
  water: PlanForm['water'] | null;
  watering: WateringWay | null;
  /** What the hose or the line gives in all, l an hour. */
  flowLPerH: number | null;
  /** Salt of the water, as electrical conductivity, dS/m. */
  waterSaltDsPerM: number | null;
  fertility: Fertility | null;
  /** Compost dug in for this crop, kg per m². */
  compostKgPerM2: number | null;
  /** Whether peas, beans or clover stood there last. */
  afterLegume: boolean | null;
  soilPh: number | null;
  /** The feed in the shed: N-P-K as printed, or an organic one by its name. */
  feedProduct: string | null;
  /** Calendar years in which any onion, garlic or leek stood there, beside the plantings of this garden. */
  alliumYears: number[];
  /** Whether white rot was ever seen there. */
  whiteRot: boolean | null;
};

export const restoreBed: RestoreEntry<GardenBed> = (found, path, tell, at) => {
  const number = (field: Parameters<typeof numberOrNull>[1]) => numberOrNull(found, field, path, tell);
  const word = <Word extends string>(field: string, words: readonly Word[]) =>
    wordOrNull(found, field, words, path, tell);
  const flag = (field: string) =>
    typeof found[field] === 'boolean' ? (found[field] as boolean) : emptied(found, field, path, tell);
  return {
    ...found,
    ...nameAndId(found, path, tell, at),
    placeId: textOrNull(found, 'placeId', path, tell),
    lengthM: number('lengthM'),
    widthM: number('widthM'),
    soil: word('soil', planFields.soil.words),
    sunHours: number('sunHours'),
    cover: word('cover', planFields.cover.words),
    water: word('water', planFields.water.words),
    watering: word('watering', wateringWays),
    flowLPerH: number('flowLPerH'),
    waterSaltDsPerM: number('waterSaltDsPerM'),
    fertility: word('fertility', fertilities),
    compostKgPerM2: number('compostKgPerM2'),
    afterLegume: flag('afterLegume'),
    soilPh: number('soilPh'),
    feedProduct: textOrNull(found, 'feedProduct', path, tell),
    alliumYears: yearsOf(found, path, tell),
    whiteRot: flag('whiteRot'),
  };
};

function yearsOf(found: Unknown, path: string, tell: Tell): number[] {
  const value = found.alliumYears;
  if (!Array.isArray(value)) {
    emptied(found, 'alliumYears', path, tell);
    return [];
  }
  const years = value.filter((year) => Number.isInteger(year) && isNumberIn(year, gardenRanges.allium));
  if (years.length < value.length) tell('emptied', `${path}.alliumYears`, value);
  return years;
}

/** The bed of a garden that a planting lies in; null where it names none that is there. */
export function bedOf(
  garden: Pick<Garden, 'beds'>,
  { bedId }: Pick<GardenPlanting, 'bedId'>,
): GardenBed | null {
  return (bedId !== null && garden.beds.find(({ id }) => id === bedId)) || null;
}

/** A planting with what it leaves unsaid told by its bed: soil, cover and watering. */
export function plantingInBed(garden: Pick<Garden, 'beds'>, planting: GardenPlanting): GardenPlanting {
  const bed = bedOf(garden, planting);
  if (!bed) return planting;
  return {
    ...planting,
    soil: planting.soil ?? bed.soil,
    cover: planting.cover ?? bed.cover,
    water: planting.water ?? bed.water,
  };
}
