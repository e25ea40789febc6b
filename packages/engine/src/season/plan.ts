import type { SoilTexture } from '../bed/index.ts';
import type { CultivarTraits, OnionType, StartMethod } from '../plant/index.ts';

/** The words a plan may say, the usual one of cover and watering first: options, addresses, tables and files all take these. */
export const planWords = {
  setStore: ['cold', 'warm'],
  cover: ['none', 'fleece', 'tunnel'],
  water: ['watered', 'rain'],
} as const;
type Word<Field extends keyof typeof planWords> = (typeof planWords)[Field][number];

/** Plants per m² that a plan may have, least and most. */
export const densityRange = [5, 400] as const;

/** What a grower decides. Days are day numbers (see calendar). */
export type Plan = {
  type: OnionType;
  /** What the cultivar does otherwise than its type; null: nothing known. */
  traits: CultivarTraits | null;
  start: StartMethod;
  /** Sowing for seed, planting for bought plants and sets. */
  startDay: number;
  /** Planting out of raised seedlings; null: as soon as seedlings and bed are ready. */
  plantOutDay: number | null;
  densityPerM2: number;
  setSizeMm: number;
  setStore: Word<'setStore'>;
  cover: Word<'cover'>;
  /** Direct sun on the bed at midsummer, h; null: open. */
  sunHours: number | null;
  water: Word<'water'>;
  soil: SoilTexture;
  /** Nursery temperature, °C; null: a seedbed outdoors where it is warm enough at sowing, else 15 °C indoors. */
  nurseryTempC: number | null;
  /** Hours of lamps in the nursery; null: natural day. */
  lampHours: number | null;
};

/** Own seedlings wait in trays for a winter at most. */
export const longestNurseryDays = 270;

export const planDefaults = {
  traits: null,
  plantOutDay: null,
  densityPerM2: 40,
  setSizeMm: 16,
  setStore: 'cold',
  cover: 'none',
  sunHours: null,
  water: 'watered',
  soil: 'loam',
  nurseryTempC: null,
  lampHours: null,
} as const satisfies Omit<Plan, 'type' | 'start' | 'startDay'>;
