import type { DayNumber } from '../calendar/index.ts';

/** One feed. */
export type Feed = {
  /** 1, 2, … in the order of their days. */
  number: number;
  /** Before planting, or once so many leaves stand. */
  stage: 'before-start' | `leaves-${number}`;
  day: DayNumber;
  nGPerM2: number;
  /** Of the grower's product. */
  gramsPerM2: number;
  gramsForBed: number | null;
};

/** How much nitrogen a crop asks for, in feeds of the grower's own product. */
export type FeedAnswer = {
  feeds: Feed[];
  /** N-P-K as printed, or an organic one by its name. */
  product: string;
  /** Taken up by the crop aimed at and to be had in all; what the soil, compost and legumes give of it; g N per m². */
  nitrogenGPerM2: number;
  fromSoilGPerM2: number;
  /** The last day for nitrogen: bulbs begin. */
  stopBy: DayNumber | null;
  aimKgPerM2: number;
};
