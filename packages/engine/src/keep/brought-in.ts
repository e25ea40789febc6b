import type { DayNumber } from '../calendar/index.ts';
import type { Observation } from '../garden/index.ts';

/** An observation of one planting with its day. */
export type Noted = Observation & { day: DayNumber };

/** What went into store; null where it was not noted. */
export type Brought = {
  kg: number | null;
  bulbs: number | null;
  /** Of the bulbs, 0…1. */
  thickNeckShare: number | null;
};

/** Weighings and counts of so many days from lifting on are of what went into store. */
const broughtInDays = 21;

/** Whether it tells of bulbs in their store. */
export function isStoreLook({ soundCount, sproutedCount, rottenCount }: Observation): boolean {
  return soundCount !== undefined || sproutedCount !== undefined || rottenCount !== undefined;
}

/** Weights and counts of the first weeks, summed; the number of bulbs counts where all weighings have one. */
export function broughtIn(own: readonly Noted[], lifted: DayNumber): Brought {
  const early = own.filter((of) => !isStoreLook(of) && of.day >= lifted && of.day <= lifted + broughtInDays);
  const weighed = early.filter((of) => of.weighedKg !== undefined || of.bulbCount !== undefined);
  const total = (field: 'weighedKg' | 'bulbCount') => {
    const values = weighed.map((of) => of[field]);
    const isWhole = values.length > 0 && values.every((value) => value !== undefined);
    const all = sum(values);
    return isWhole && all > 0 ? all : null;
  };
  const bulbs = total('bulbCount');
  return { kg: total('weighedKg'), bulbs, thickNeckShare: thickNecks(early, bulbs) };
}

/** Of the bulbs counted with them, else of all that were brought in. */
function thickNecks(early: readonly Noted[], bulbs: number | null): number | null {
  const seen = early.filter(({ thickNeckCount }) => thickNeckCount !== undefined);
  const isEachCounted = seen.every(({ bulbCount }) => bulbCount !== undefined);
  const of = isEachCounted ? sum(seen.map(({ bulbCount }) => bulbCount)) : (bulbs ?? 0);
  return seen.length > 0 && of > 0 ? Math.min(1, sum(seen.map((one) => one.thickNeckCount)) / of) : null;
}

function sum(values: readonly (number | undefined)[]): number {
  return values.reduce<number>((all, value) => all + (value ?? 0), 0);
}
