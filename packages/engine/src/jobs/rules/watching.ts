import type { DayNumber } from '../../calendar/index.ts';
import { calendarYear, type DateSpread } from '../../season/index.ts';
import type { Course, SettledCourse } from '../course.ts';
import { type Due, due, within } from '../due.ts';
import { mildewShares, mildewWeather } from '../mildew-weather.ts';
import { midwinter, pestDates, pests, singleGenerationDays } from '../pests.ts';

/** Flies lay from 9–10 days after they come on (Ontario), so that harm goes on after a flight. */
const layingDays = 14;
/** The seedcorn fly eats seed and seedlings: plants up or set so long are past it (memory). */
const tenderDays = 28;
/** Less often than this is not worth a warning. */
const leastShare = 0.2;
const mostly = 0.5;

/** The days in which plants of the crop are in their bed. */
function bedDays({
  stands,
  lift,
  last,
  liftedOn,
}: SettledCourse): { first: DayNumber; end: DayNumber } | null {
  return stands && { first: stands.p50, end: liftedOn ?? lift?.best ?? last };
}

export function onionFly(course: SettledCourse): Due[] {
  const bed = bedDays(course);
  return bed ? flights(course, pests.onionFly, 'onion-fly', bed.first, bed.end) : [];
}

export function seedcornFly(course: SettledCourse): Due[] {
  const bed = bedDays(course);
  if (!bed) return [];
  const { crop, start } = course;
  const first = crop.plan.start === 'direct-seed' ? start : bed.first;
  return flights(course, pests.seedcornFly, 'seedcorn-fly', first, Math.min(bed.end, bed.first + tenderDays));
}

/** The flights that meet plants, each numbered by its place in the years, whichever of them are met. */
function flights(
  { crop }: Course,
  pest: (typeof pests)['onionFly' | 'seedcornFly'],
  code: string,
  first: DayNumber,
  end: DayNumber,
): Due[] {
  const { site, plan } = crop;
  return pestDates(site, plan.startDay, pest).flatMap((winter, year) =>
    winter.flatMap((flight, at) => {
      const days = mostlyOn(flight);
      // one that mostly comes after the crop harms the next
      if (!days || days.p50 > end) return [];
      const met = within({ from: days.p10, best: days.p50, to: days.p90 + layingDays }, first, end);
      if (!met) return [];
      const values = {
        flight: at + 1,
        degreeDaysC: pest.sums[at],
        baseTempC: pest.baseC,
        flightDay: days.p50,
      };
      return due(met, code, values, { number: year * pest.sums.length + at + 1 });
    }),
  );
}

function mostlyOn({ share, days }: DateSpread): DateSpread['days'] {
  return share >= mostly ? days : null;
}

/** From the first young of the year; most harm is done as bulbs start (University of California IPM). */
export function thrips(course: SettledCourse): Due | null {
  const bed = bedDays(course);
  const { onset, crop } = course;
  if (!bed || !onset) return null;
  const { site, plan } = crop;
  const found = pestDates(site, plan.startDay, pests.thrips).map(([first]) => mostlyOn(first)?.p50 ?? null);
  const year = calendarYear(plan.startDay);
  // of the winter before bulbs start
  const winter = found.findLastIndex((_, at) => midwinter(year + at, site.climate.latitudeDeg) <= onset.p50);
  const first = winter < 0 ? bed.first : found[winter];
  if (first === null) return null;
  const days = within({ from: first, best: onset.p50, to: bed.end }, bed.first, bed.end);
  const generationDays = singleGenerationDays(site, onset.p50);
  if (!days || generationDays === null) return null;
  return due(days, 'thrips', { onsetDay: onset.p50, generationDays });
}

/** The stretch of days in which most years bring mildew weather: now or next, else the last one. */
export function mildew(course: SettledCourse): Due | null {
  const bed = bedDays(course);
  if (!bed) return null;
  const { crop } = course;
  const { latentFrom, latentTo, spellDays, of } = mildewWeather;
  const shares = mildewShares(crop.site, course.start, bed.first, bed.end);
  const { first, end } = stretchOf(shares, crop.today - bed.first - latentTo);
  const peak = highest(shares, first, end);
  if (!(shares[peak] >= leastShare)) return null;
  const from = bed.first + first + latentFrom;
  const days = within(
    { from, best: Math.max(from, bed.first + peak + latentFrom), to: bed.first + end + latentTo },
    bed.first,
    bed.end,
  );
  return days && due(days, 'mildew', { share: shares[peak], spellDays, of, spellDay: bed.first + peak });
}

/** Where shares reach the threshold without a break, by index; without one, the week about the highest. */
function stretchOf(shares: Float64Array, since: number): { first: number; end: number } {
  let found: { first: number; end: number } | null = null;
  for (let at = 0; at < shares.length; at++) {
    if (shares[at] < mostly) continue;
    const first = at;
    while (at + 1 < shares.length && shares[at + 1] >= mostly) at++;
    found = { first, end: at };
    if (at >= since) break;
  }
  if (found) return found;
  const peak = highest(shares, 0, shares.length - 1);
  return { first: Math.max(0, peak - 3), end: Math.min(shares.length - 1, peak + 3) };
}

function highest(shares: Float64Array, first: number, end: number): number {
  let peak = first;
  for (let at = first; at <= end; at++) if (shares[at] > shares[peak]) peak = at;
  return peak;
}
