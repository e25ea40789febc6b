import { soilTextures } from '../bed/index.ts';
import type { DayNumber } from '../calendar/index.ts';
import type { CultivarTraits, OnionType, StartMethod } from '../plant/index.ts';

/** A number of a plan with its range and unit, or one of some words, the usual one of cover and watering first. */
type PlanField = { name: string; only: StartMethod | null } & (
  | { range: readonly [number, number]; unit: string }
  | { words: readonly string[] }
);

/**
 * How a crop is grown, told once for options, batch columns, addresses, garden files and documents: what each field is
 * called, what it may say, and the one way of starting in which it has a part (null: all).
 */
export const planFields = {
  densityPerM2: { name: 'density', range: [5, 400], unit: 'per m²', only: null },
  setSizeMm: { name: 'set-size', range: [5, 40], unit: 'mm', only: 'sets' },
  setStore: { name: 'set-store', words: ['cold', 'warm'], only: 'sets' },
  cover: { name: 'cover', words: ['none', 'fleece', 'tunnel'], only: null },
  water: { name: 'water', words: ['watered', 'rain'], only: null },
  soil: { name: 'soil', words: soilTextures, only: null },
  nurseryTempC: { name: 'nursery-temp', range: [2, 35], unit: '°C', only: 'raised-seedlings' },
  lampHours: { name: 'lamp-hours', range: [0, 24], unit: 'h', only: 'raised-seedlings' },
} as const satisfies Record<string, PlanField>;

type Word<Field extends 'setStore' | 'cover' | 'water' | 'soil'> =
  (typeof planFields)[Field]['words'][number];

/** Every field that some plan has, as options fill them whatever the start. */
export type PlanForm = {
  type: OnionType;
  /** What the cultivar does otherwise than its type; null: nothing known. */
  traits: CultivarTraits | null;
  start: StartMethod;
  /** Sowing for seed, planting for bought plants and sets. */
  startDay: DayNumber;
  /** Planting out of raised seedlings; null: as soon as seedlings and bed are ready. */
  plantOutDay: DayNumber | null;
  densityPerM2: number;
  setSizeMm: number;
  setStore: Word<'setStore'>;
  cover: Word<'cover'>;
  /** Direct sun on the bed at midsummer, h; null: open. */
  sunHours: number | null;
  water: Word<'water'>;
  soil: Word<'soil'>;
  /** Nursery temperature, °C; null: a seedbed outdoors where it is warm enough at sowing, else 15 °C indoors. */
  nurseryTempC: number | null;
  /** Hours of lamps in the nursery; null: natural day. */
  lampHours: number | null;
};

/** The one way of starting in which a field has a part; null: all. */
type Only = { [Field in keyof typeof planFields]: (typeof planFields)[Field]['only'] } & {
  plantOutDay: 'raised-seedlings';
};

type FieldOfOthers<Start> = {
  [Field in keyof Only]: Only[Field] extends null | Start ? never : Field;
}[keyof Only];

/** What a grower decides. Fields of one way of starting can be read where the start is known to be that way. */
export type Plan<Start extends StartMethod = StartMethod> = Start extends StartMethod
  ? { start: Start } & Omit<PlanForm, 'start' | FieldOfOthers<Start>>
  : never;

/** A plan some of whose fields are still open. */
export type PlanWithout<Field extends keyof PlanForm> = {
  [Start in StartMethod]: Omit<Plan<Start>, Field>;
}[StartMethod];

/** The plan started on a day; `plantOutDay` is heeded by raised seedlings alone. */
export function startedOn(
  plan: PlanWithout<'startDay' | 'plantOutDay'>,
  startDay: DayNumber,
  plantOutDay: DayNumber | null = null,
): Plan {
  // all plans have all fields, so that what runs them meets objects of one shape
  const started = { ...plan, startDay, plantOutDay };
  return started;
}

/** Planting out of raised seedlings where a day is set for it; null: as soon as they are ready, or they never are moved. */
export function plantOutDayOf(plan: Plan): DayNumber | null {
  return plan.start === 'raised-seedlings' ? plan.plantOutDay : null;
}

/** Own seedlings wait in trays for a winter at most. */
export const longestNurseryDays = 270;

/**
 * What growers usually do: 40 plants per m², sets of 16 mm, watered loam, in the open. Spread it and add `type`,
 * `start` and `startDay` to have a {@link Plan}.
 */
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
} as const satisfies Omit<PlanForm, 'type' | 'start' | 'startDay'>;
