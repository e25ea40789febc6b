import type { AtlasAsked, DayNumber, Region } from '@neckfall/engine';

/** What a map is of, as plain values: the same settings give the same map, byte for byte. */
export type AtlasSettings = AtlasAsked & {
  /** As it was named. */
  region: string;
  box: Region;
  /** ISO alpha-2 code: only points whose nearest town lies there; null: all. */
  country: string | null;
  stepDeg: number;
  /** Every kind started every way at each point, not what leads alone. */
  isFull: boolean;
  years: number;
  seed: number;
  /** Warming offset, °C; null: the default. */
  warmerC: number | null;
  /** Direct sun at midsummer, h; null: open. */
  sunHours: number | null;
  /** Starts are the next to come from this day on. */
  from: DayNumber;
};

/** Which tiles are worked out here: every `of`-th, counted from `number` of 1…of. */
export type Shard = { number: number; of: number };
