import type { SeasonDay } from '../calendar/index.ts';
import { parseDay } from '../calendar/index.ts';
import { longestSeason } from '../season/index.ts';
import type { TendedCrop } from './tended-crop.ts';
import type { WaterAssumption } from './water-answer.ts';

/** Who notes no watering is taken to have watered when it was due until so many days ago, and not since. An assumption. */
export const unnotedDays = 3;

/** What a bed was given so far and will be given, days counted from the start of the plan. */
export type GivenSoFar = {
  /** Let out on each day, mm; infinite where the bed was filled. */
  notedMm: Float64Array;
  /** Filled when it asks for water, on days before the first and from the second on. */
  dueUntil: SeasonDay;
  dueFrom: SeasonDay;
};

/** A bed that is filled whenever it asks for water. */
export const alwaysWatered: GivenSoFar = {
  notedMm: new Float64Array(longestSeason + 1),
  dueUntil: Number.POSITIVE_INFINITY,
  dueFrom: 0,
};

/**
 * Water given to a crop up to today, by what was noted, and from today on when it is due. Of a watered crop nobody
 * believes that it never had a drop before the first note; a crop on rain alone had what was noted.
 */
export function givenSoFar({ plan, ground, observations, today }: TendedCrop): {
  given: GivenSoFar;
  assumed: WaterAssumption[];
} {
  const notedMm = new Float64Array(longestSeason + 1);
  const assumed: WaterAssumption[] = [];
  const now = today - plan.startDay;
  let first = Number.POSITIVE_INFINITY;
  for (const { date, wateredLitres } of observations) {
    const day = (parseDay(date) ?? Number.NaN) - plan.startDay;
    if (wateredLitres === undefined || !(day >= 0 && day <= now && day < notedMm.length)) continue;
    first = Math.min(first, day);
    if (wateredLitres > 0)
      notedMm[day] += ground.areaM2 === null ? Number.POSITIVE_INFINITY : wateredLitres / ground.areaM2;
  }
  const isNoted = first < Number.POSITIVE_INFINITY;
  if (isNoted && ground.areaM2 === null) assumed.push('noted-filled');
  if (plan.water !== 'watered' || now <= 0) return { given: { notedMm, dueUntil: 0, dueFrom: now }, assumed };
  if (first > 0) assumed.push(isNoted ? 'watered-till-noted' : 'watered-when-due');
  return { given: { notedMm, dueUntil: isNoted ? first : now - unnotedDays + 1, dueFrom: now }, assumed };
}
