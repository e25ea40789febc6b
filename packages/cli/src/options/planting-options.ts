import {
  bedOf,
  densityOf,
  type GardenBed,
  type GardenPlace,
  type GardenPlanting,
  plantingInBed,
  spacingOf,
} from '@neckfall/engine';
import type { Speaker } from '@neckfall/words';
import { type GardenFile, readGardenFile } from '../files/garden-file.ts';
import { refuse } from '../refusal/refusal.ts';
import { findPlanting } from './find-planting.ts';
import type { RawPlaceOptions } from './place-options.ts';
import { type RawPlanOptions, withoutOthers } from './plan-options.ts';

/** Of the commands that answer for a planting of a garden file. */
export type RawPlantingOption = { planting?: string };

/** A planting of a garden file, with its place. */
export type AskedPlanting = {
  path: string;
  file: GardenFile;
  /** With what its bed says for it. */
  planting: GardenPlanting;
  bed: GardenBed | null;
  place: GardenPlace;
};

const field = '--planting';
/** What the planting says itself, or its place. */
const saidByPlanting = [
  'at',
  'sun',
  'garden',
  'start',
  'class',
  'cultivar',
  'packetHours',
  'packetDays',
  'date',
  'plantOut',
  'nurseryTemp',
  'lampHours',
  'density',
  'setSize',
  'setStore',
  'cover',
  'water',
  'soil',
] as const satisfies readonly (keyof (RawPlaceOptions & RawPlanOptions))[];

/** The planting of `--planting`, by its id or its name, in the file that stands in the place's stead. */
export function readPlanting(
  path: string | undefined,
  raw: RawPlantingOption & RawPlaceOptions & RawPlanOptions,
  speaker: Speaker,
): AskedPlanting {
  const value = raw.planting ?? '';
  if (path === undefined) throw refuse('planting-no-garden', { field, values: { value } });
  const besides = saidByPlanting.find((option) => raw[option] !== undefined);
  if (besides) {
    const flag = `--${besides.replace(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`)}`;
    const values = { other: `${field} ${value}`, why: speaker.say('clash.planting-says-all') };
    throw refuse('contradiction', { field: flag, values });
  }
  const file = readGardenFile(path, speaker);
  const kept = findPlanting(file.garden, value, path, speaker);
  const planting = plantingInBed(file.garden, kept);
  const bed = bedOf(file.garden, kept);
  const place = file.garden.places.find(({ id }) => id === planting.placeId);
  if (!place) throw refuse('planting-placeless', { field, exit: 3, values: { value, file: path } });
  const missing = missingOf(planting);
  if (missing) throw refuse('planting-open', { field, exit: 3, values: { value, file: path, missing } });
  return {
    path,
    file,
    planting,
    bed,
    place: bed?.sunHours == null ? place : { ...place, sunHours: bed.sunHours },
  };
}

/** A garden file named without a planting is no town. */
export function refuseGarden(place: string | undefined): void {
  if (place?.endsWith('.neckfall.json'))
    throw refuse('garden-no-planting', { field, values: { value: place } });
}

/** What a planting has to say before it can be grown; null where it says all. */
function missingOf({ start, startDate, cultivar, class: printed, packetHours }: GardenPlanting) {
  if (start === null) return 'start';
  if (startDate === null) return 'startDate';
  return cultivar === null && printed === null && packetHours === null ? 'cultivar' : null;
}

export function isGrowable(planting: GardenPlanting): boolean {
  return missingOf(planting) === null;
}

/** A planting as the options that would say the same; its days apart. */
export function rawOfPlanting(planting: GardenPlanting): RawPlanOptions {
  const { cultivar, start } = planting;
  const saysPacket = planting.class !== null || planting.packetHours !== null || planting.packetDays !== null;
  const said = {
    // a packet said of the planting itself comes before that of its onion
    ...(cultivar !== null && !saysPacket
      ? { cultivar }
      : {
          class: planting.class,
          packetHours: planting.packetHours,
          packetDays: planting.packetDays,
        }),
    start,
    density: densityOf(spacingOf(planting)),
    setSize: planting.setSizeMm,
    setStore: planting.setStore,
    cover: planting.cover,
    water: planting.water,
    soil: planting.soil,
    nurseryTemp: planting.nurseryTempC,
    lampHours: planting.lampHours,
  };
  const raw: RawPlanOptions = Object.fromEntries(
    Object.entries(said).flatMap(([option, value]) => (value === null ? [] : [[option, String(value)]])),
  );
  return withoutOthers(raw, start ?? undefined);
}
