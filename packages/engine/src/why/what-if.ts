import type { DayNumber } from '../calendar/index.ts';
import type { OnionType, StartMethod, Verdict } from '../plant/index.ts';
import type { Plan, Spread } from '../season/index.ts';

/** What is done otherwise in the season without a cause. */
export type Change =
  | { code: 'other-kind'; type: OnionType }
  | { code: 'other-start'; type: OnionType; start: StartMethod; day: DayNumber }
  | { code: 'earlier'; days: number; day: DayNumber }
  | { code: 'later'; days: number; day: DayNumber }
  | { code: 'smaller-sets'; mm: number }
  | { code: 'warm-stored-sets' }
  | { code: 'watered' }
  | { code: 'wider'; perM2: number }
  | { code: 'in-sun' }
  | { code: 'covered'; cover: 'fleece' | 'tunnel' }
  | { code: 'fresh-packet' }
  /** As it is usual in the place, where nobody said what was grown or when. */
  | { code: 'usual-kind' }
  | { code: 'usual-day' }
  | { code: 'cool-store'; tempC: number }
  | { code: 'dry-store'; humidityPct: number }
  | { code: 'frost-free-store' }
  | { code: 'better-keeper'; months: number }
  | { code: 'lifted-ripe' }
  /** Nobody's doing: the usual weather of the place, or one so much warmer (colder: less than 0). */
  | { code: 'usual-weather' }
  | { code: 'other-weather'; byC: number };

/** What is changed, as the code of a message. */
export type ChangeCode = Change['code'];

/** A season as grown, or as it might have been, over the seasons run. */
export type GrownSo = {
  plan: Plan;
  outcome: Verdict;
  goodShare: number;
  /** Null where no bulb forms. */
  bulbDiameterMm: Spread | null;
  leavesAtOnset: number | null;
  boltedShare: number;
  onset: DayNumber | null;
  neckFall: DayNumber | null;
  /** Share of the bulbs still sound on the day asked about; null where no store is in question. */
  soundShare: number | null;
};

/** The season with a cause at work, and without it. */
export type WhatIf = { change: Change; atWork: GrownSo; grown: GrownSo };
