import type { DayLengthClass } from '../plant/index.ts';
import { planFields } from '../season/index.ts';
import { believable, type RecordField } from '../weather/index.ts';
import type { GardenBed } from './bed.ts';
import type { GardenWeather } from './garden-weather.ts';
import type { JobMark } from './job-mark.ts';
import type { GardenKitchen } from './kitchen.ts';
import type { Observation } from './observation.ts';
import type { GardenPlanting } from './planting.ts';
import type { Unknown } from './restoring.ts';

/** What a garden file says of itself. */
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

/** All that a garden file holds. */
export type Garden = Unknown & {
  schema: typeof gardenSchemaName;
  places: GardenPlace[];
  beds: GardenBed[];
  cultivars: OwnCultivar[];
  plantings: GardenPlanting[];
  /** What was seen of plantings and done to them, in no order. */
  observations: Observation[];
  /** What became of the work on plantings, in no order; the last one of a piece of work holds. */
  jobs: JobMark[];
  /** The weather that came, by place. */
  weather: GardenWeather[];
  /** What is to be grown for; null where nothing was said. */
  kitchen: GardenKitchen | null;
};

/** A garden in which nothing is kept yet. */
export function emptyGarden(): Garden {
  return {
    schema: gardenSchemaName,
    places: [],
    beds: [],
    cultivars: [],
    plantings: [],
    observations: [],
    jobs: [],
    weather: [],
    kitchen: null,
  };
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
  plantsPerStation: [1, 12],
  lengthM: [0.1, 1_000],
  widthM: [0.1, 1_000],
  flowLPerH: [1, 100_000],
  compostKgPerM2: [0, 50],
  soilPh: [3, 10],
  waterSaltDsPerM: [0, 20],
  allium: [1900, 2200],
  setSizeMm: planFields.setSizeMm.range,
  nurseryTempC: planFields.nurseryTempC.range,
  lampHours: planFields.lampHours.range,
  lookedAt: [1, 1_000_000],
  leavesGreen: [0, 30],
  neckMm: [0, 100],
  bulbMm: [0, 300],
  standCount: [0, 1_000_000],
  floweringCount: [0, 1_000_000],
  topsOverShare: [0, 1],
  wateredLitres: [0, 10_000_000],
  fedG: [0, 10_000_000],
  weighedKg: [0, 1_000_000],
  bulbCount: [0, 1_000_000],
  thickNeckCount: [0, 1_000_000],
  soundCount: [0, 1_000_000],
  sproutedCount: [0, 1_000_000],
  rottenCount: [0, 1_000_000],
  people: [1, 100],
  gramsPerWeek: [1, 1_000_000],
  storeTempC: [-10, 40],
  storeHumidityPct: [0, 100],
  humidityPct: [0, 100],
  tempMinC: rangeOf('tempMinC'),
  tempMaxC: rangeOf('tempMaxC'),
  rainMm: rangeOf('rainMm'),
  solarMJ: rangeOf('solarMJ'),
} as const;

function rangeOf(field: RecordField): readonly [number, number] {
  return [believable[field].low, believable[field].high];
}
