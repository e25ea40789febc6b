import type { Course } from '../course.ts';
import { type Due, due } from '../due.ts';

/** Weeds that come up in the first two weeks do little harm yet, in the first four some (Nebraska 20 % of the crop, Britain none). */
const weedsFromDays = 14;
/** Kept clean for twelve weeks after it is up, a sown crop loses 5 % at most (Nebraska); plants and sets ask for eight weeks (memory). */
const cleanDays = { sown: 84, planted: 56 } as const;
/** Left for eight weeks, weeds took 65 % of the crop (Nebraska). */
const lostPercent = 65;

/** From two weeks after it is up or set until bulbs start: what is lost to weeds then is not made good. */
export function weed({ crop, stands, onset }: Course): Due | null {
  if (!stands) return null;
  const clean = crop.plan.start === 'direct-seed' ? cleanDays.sown : cleanDays.planted;
  const from = stands.p50 + weedsFromDays;
  const to = onset && onset.p50 > from ? onset.p50 : stands.p50 + clean;
  const best = Math.min(from + weedsFromDays, to);
  return due({ from, best, to }, onset ? 'weed' : 'weed-leaves', { percent: lostPercent, untilDay: to });
}

/** Leaves from which a plant is worth pulling green (common practice, no source). */
export const greenLeaves = 4;
/** Nothing is thinned any more in the last days before bulbs start. */
const thinnedBeforeDays = 7;
/** Sets and plants so close give every other one green (University of Illinois Extension: set at 50 mm; memory for the density). */
const closePerM2 = 60;
/** Green onions are pulled within so many days (University of Illinois Extension: 28–42; Erath column: to 60). */
const greenWithinDays = 32;

export function thin({ crop: { plan }, stands, onset, end, leavesOn }: Course): Due | null {
  if (!stands || end === 'leaves' || end === 'lost') return null;
  if (plan.start !== 'direct-seed' && plan.densityPerM2 < closePerM2) return null;
  const from = leavesOn(greenLeaves);
  if (from === null) return null;
  const latest = onset ? onset.p50 - thinnedBeforeDays : from + greenWithinDays;
  if (from > latest) return null;
  const to = Math.min(latest, from + greenWithinDays);
  const best = Math.round((from + to) / 2);
  return due({ from, best, to }, 'thin', {
    leaves: greenLeaves,
    density: Math.round(plan.densityPerM2),
    onsetDay: onset?.p50 ?? latest,
  });
}
