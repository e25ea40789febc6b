import type { DayNumber } from '../calendar/index.ts';
import type { DateSpread, Spread } from '../season/index.ts';

/** What a planting has in store on a day. */
export type StoredNow = {
  plantingId: string;
  liftedOn: DayNumber;
  /** Sound bulbs, kg; null where none was weighed or counted. */
  soundKg: Spread | null;
  soundBulbs: Spread | null;
  /** Of the bulbs lifted, on the day asked. */
  soundShare: Spread;
  /** Until so many are gone that the lot is called over, eaten from or not. */
  lastsUntil: DateSpread;
  /** Of them within the next 30 days, share of those sound today. */
  lostNextShare: number;
  checks: number;
};
