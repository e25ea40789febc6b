import type { BedNitrogen, Fertility, LimeAdvice } from '../bed/index.ts';
import type { DayNumber } from '../calendar/index.ts';

/** One feed. */
export type Feed = {
  /** 1, 2, … in the order of their days. */
  number: number;
  /** Before planting, or once so many leaves stand. */
  stage: 'before-start' | `leaves-${number}`;
  day: DayNumber;
  /** Still to be given, nitrogen that the crop can draw on; 0 once what was fed covers it. */
  nGPerM2: number;
  /** Of the grower's product. */
  gramsPerM2: number;
  gramsForBed: number | null;
};

/** How much nitrogen a crop asks for, in feeds of the grower's own product. All amounts are g per m². */
export type FeedAnswer = {
  feeds: Feed[];
  /** N-P-K as printed, or an organic one by its name. */
  product: string;
  /** Null: nothing was said of the product, and a usual one stands in. */
  productSaid: string | null;
  /** Bulbs aimed at; null: nothing was said, and the crop's own season tells. */
  aimKgPerM2: number;
  aimSaid: number | null;
  /** Taken away with the crop aimed at, and to be had in all for it. */
  takenGPerM2: number;
  nitrogenGPerM2: number;
  /** What soil, compost and legumes give of it, and by what the soil was taken. */
  fromBed: BedNitrogen;
  fromSoilGPerM2: number;
  fertility: Fertility;
  /** Rain takes part of what is given. */
  isCoarse: boolean;
  /** To be given in all, and so much of it that no feed can bring before bulbs begin. */
  toGiveGPerM2: number;
  leftOutGPerM2: number;
  /** Fed so far, as noted; null: on an area that is not known. */
  givenGPerM2: number | null;
  /** What the feeds still to come bring beside, as bags print it; null: not known. */
  besides: { phosphateGPerM2: number; potashGPerM2: number } | null;
  /** The first day on which bulbs may begin: no nitrogen from here on. Null: they don't. */
  stopBy: DayNumber | null;
  /** Null: nothing said of the soil's pH. */
  lime: LimeAdvice | null;
};
