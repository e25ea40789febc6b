import type { WateringWay } from '../bed/index.ts';
import type { DayNumber } from '../calendar/index.ts';
import type { DateSpread, Spread } from '../season/index.ts';

/** The bed's water on the day asked about, of the season in the middle. mm are litres on a square metre. */
export type WaterToday = {
  /** Missing below a full bed, and what may be missing before the crop feels it, mm. */
  depletionMm: number;
  readilyAvailableMm: number;
  waterNow: boolean;
  /** To fill the bed, with what runs beside and what washes out salt; 0 on a full bed. */
  litresPerM2: number;
  /** Null where the area, or the flow of hose or line, is not known. */
  litresForBed: number | null;
  minutes: number | null;
};

/** One day of the bed in the season whose need is in the middle, mm. */
export type WaterDay = {
  day: DayNumber;
  rainMm: number;
  /** Let out of can, hose or line, and what of it never came to the roots. */
  givenMm: number;
  besideMm: number;
  /** Through the crop, and from bare ground. */
  transpiredMm: number;
  evaporatedMm: number;
  /** Run through below the roots. */
  drainedMm: number;
  /** At the end of the day. */
  depletionMm: number;
  readilyAvailableMm: number;
};

/** What was taken for known of the water given so far: codes for sentences. */
export type WaterAssumption =
  /** Nothing was noted: watered when it was due until the last few days, not since. */
  | 'watered-when-due'
  /** Watered when it was due until the first watering that was noted. */
  | 'watered-till-noted'
  /** The bed's size is not known: each watering noted filled it. */
  | 'noted-filled';

/** What a crop asks of water. */
export type WaterAnswer = {
  /** Null before the crop is in its bed and once watering has ended. */
  today: WaterToday | null;
  /** The next day on which it asks for water; share of the seasons in which it does. */
  next: DateSpread;
  /** The one after, when it was given the next. */
  following: DateSpread;
  /** Tops begin to fall: no water from here on. */
  stop: DateSpread;
  /**
   * From planting or sowing to the stop, litres on a square metre: to be let out in all so that it never goes thirsty;
   * rain; and what was, or from now on will have been, let out. Null where no season brings a crop into its bed.
   */
  seasonMm: { need: Spread; rain: Spread; given: Spread } | null;
  /** How it is given, and the share of it that comes to the roots. */
  watering: WateringWay;
  efficiency: number;
  /** What salt in the water leaves of the yield, 0…1, and the share given more to wash it out; null: nothing said of salt. */
  salt: { yieldShare: number; leachingShare: number } | null;
  assumed: WaterAssumption[];
  /** Empty unless asked for. */
  days: WaterDay[];
};
