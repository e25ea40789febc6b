import type { DayNumber } from '../calendar/index.ts';
import type { DateSpread, Spread } from '../season/index.ts';

/** The bed's water on the day asked about. mm are litres on a square metre. */
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

/** One day of the middling season's bed, mm. */
export type WaterDay = {
  day: DayNumber;
  rainMm: number;
  givenMm: number;
  /** Through the crop, and from bare ground. */
  transpiredMm: number;
  evaporatedMm: number;
  /** Run through below the roots. */
  drainedMm: number;
  depletionMm: number;
  readilyAvailableMm: number;
};

/** What a crop asks of water. */
export type WaterAnswer = {
  /** Null before the crop is in its bed and once watering has ended. */
  today: WaterToday | null;
  /** The next day on which it asks for water; share of the seasons in which it does. */
  next: DateSpread;
  /** Tops begin to fall: no water from here on. */
  stop: DateSpread;
  /** From planting or sowing to the stop: to be given in all, rain, and what was or would be given, mm. */
  seasonMm: { need: Spread; rain: Spread; given: Spread };
  /** What salt in the water takes of the yield, 0…1, and the share given more to wash it out; null: nothing said of salt. */
  salt: { yieldShare: number; leachingShare: number } | null;
  days: WaterDay[];
};
