import type { SeasonDay } from '../calendar/index.ts';
import { type Outcome, stage } from '../season/index.ts';

/** Bulbs that have started and stay green gain no more after so long (memory). */
export const longestUnripe = 120;

/** Share of the bulbs with a thick neck in a crop whose tops went over by themselves (memory, adjustable). */
const thickWhenRipe = 0.04;
/** Share of the bulbs knocked or cut by careful hands (memory, adjustable). */
export const usualBruised = 0.05;
/** A lot that ripened and was lifted with care. */
export const usualLifted = { thickNeckShare: thickWhenRipe, bruisedShare: usualBruised } as const;
/** Bulbs whose necks never close last so long, months (memory, adjustable). */
export const unripeKeepsMonths = [0.5, 1.5] as const;

/** Bulbs as they come out of the ground. */
export type Lifted = { on: SeasonDay; isRipe: boolean; thickNeckShare: number };

/** When the bulbs of one season are lifted, at neck fall, when 8 tops in 10 are over; days from the start; null where none formed. @param lastDay of its season */
export function liftedOf(outcome: Outcome, lastDay: SeasonDay): Lifted | null {
  if (outcome.reached < stage.onset) return null;
  if (outcome.reached === stage.fallen)
    return { on: outcome.fellOn, isRipe: true, thickNeckShare: thickWhenRipe };
  return { on: Math.min(outcome.onsetOn + longestUnripe, lastDay), isRipe: false, thickNeckShare: 1 };
}
