import type { DayLengthClass } from '../plant/index.ts';
import { planFields } from '../season/index.ts';
import type { GardenPlanting } from './planting.ts';
import type { Unknown } from './restoring.ts';

export const gardenSchemaName = 'neckfall/garden@1';

/** A place of the grower's own. */
export type GardenPlace = Unknown & {
  id: string;
  name: string;
  latitudeDeg: number;
  longitudeDeg: number;
  /** Above the sea, m; null: as the climate has it. */
  elevationM: number | null;
  /** Direct sun on the bed at midsummer, h; null: open. */
  sunHours: number | null;
  /** Whether cold air gathers there; null: nothing said. */
  frostHollow: boolean | null;
};

/** An onion of the grower's own, as its packet has it; null where the packet is silent. */
export type OwnCultivar = Unknown & {
  id: string;
  name: string;
  class: DayLengthClass | null;
  /** Day length from which it makes bulbs, h. */
  packetHours: number | null;
  packetDays: number | null;
  /** Shortest and longest keeping, months. */
  keepsMonths: readonly [number, number] | null;
};

export type Garden = Unknown & {
  schema: typeof gardenSchemaName;
  places: GardenPlace[];
  cultivars: OwnCultivar[];
  plantings: GardenPlanting[];
};

export function emptyGarden(): Garden {
  return { schema: gardenSchemaName, places: [], cultivars: [], plantings: [] };
}

/** Ranges of what is stored, in the units of the names. */
export const gardenRanges = {
  latitudeDeg: [-90, 90],
  longitudeDeg: [-180, 180],
  elevationM: [-430, 6000],
  sunHours: [0, 24],
  packetHours: [8, 20],
  packetDays: [30, 400],
  keepsMonths: [0, 24],
  rowDistanceCm: [10, 60],
  plantDistanceCm: [2.5, 30],
  plants: [1, 1_000_000],
  setSizeMm: planFields.setSizeMm.range,
  nurseryTempC: planFields.nurseryTempC.range,
  lampHours: planFields.lampHours.range,
} as const;
