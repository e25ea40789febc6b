import {
  type Cause,
  type OnionType,
  type Plan,
  type PlanForm,
  type StoreAsked,
  type StoreClimate,
  type Symptom,
  storeClimateOf,
  type Trial,
} from '../../packages/engine/src/index.ts';
import type { StudyPlace } from './places.ts';

/** A crop with a cause in it, as it was and as its grower tells it. */
export type Spoilt = {
  cause: Cause;
  /** What was lived through, and the same without the cause. */
  lived: Trial;
  sound: Trial;
  /** What something brings that no run knows. */
  shows: Partial<Record<Symptom, number>>;
  /** What the grower tells. */
  told: Plan;
  said: readonly (keyof PlanForm)[];
  store: StoreClimate;
  isStoreSaid: boolean;
  keepsMonths: readonly [number, number];
};

const keeps: Readonly<Record<OnionType, readonly [number, number]>> = {
  'tropical-short': [2, 3],
  short: [2, 3],
  intermediate: [3, 4],
  'early-long': [4, 6],
  'northern-long': [6, 8],
};

/** What every grower says of a crop. */
export const always = ['type', 'start', 'startDay'] as const satisfies (keyof PlanForm)[];

/** A store that keeps well, with a kind that keeps. */
export function goodStore(air: StoreClimate): StoreAsked {
  const same = (value: number) => air.tempC.map(() => value);
  return {
    air: { tempC: same(3), humidityPct: same(66) },
    keepsMonths: [6, 8],
    noticed: null,
    thickNecks: [0, 1],
  };
}

/** A cause put into a sound crop of a place; left out, it is told as it was. */
export function spoiltCrop(
  { climate, lived: site }: StudyPlace,
  sound: Plan,
  cause: Cause,
  plan: Plan,
  otherwise: Partial<Spoilt> = {},
): Spoilt {
  return {
    cause,
    lived: { site, plan, store: null },
    sound: { site, plan: sound, store: null },
    shows: {},
    told: plan,
    said: always,
    store: storeClimateOf(climate, 'shed'),
    isStoreSaid: true,
    keepsMonths: keeps[sound.type],
    ...otherwise,
  };
}
