import { climateDayOf, climateYearDays, type DayNumber } from '../calendar/index.ts';
import { hindranceOn } from '../choice/index.ts';
import type { Site } from '../season/index.ts';
import { greenDays } from './green-lot.ts';
import type { GapCloser } from './keep-year.ts';
import type { GrownStart } from './lot-survey.ts';

/** Overwintered onions lifted so long before a gap still feed into it: they keep two to three months (memory). */
const overwinteredReachDays = 60;
/** Shallots want a cool winter: mean of the coldest month, °C (memory, adjustable). */
const shallotWinterC = 13;
/** They are lifted up to a month before onions of spring and keep till the next are green, months after the longest day (common practice, no source). */
const shallotsFromDays = 10;
const shallotsKeepDays = 300;

/** What feeds the kitchen in a gap, the best first; to buy is always left. */
export function closersOf(
  site: Site,
  from: DayNumber,
  to: DayNumber,
  grown: readonly GrownStart[],
): GapCloser[] {
  const closers: GapCloser[] = [];
  if (grown.some((lot) => mightOverwinter(lot, from, to))) closers.push('overwintered');
  if (hasGreen(site, from, to)) closers.push('green-onions');
  if (hasShallots(site, from, to)) closers.push('shallots');
  return [...closers, 'bought'];
}

/** A start of autumn whose bulbs would be there, were it less of a risk. */
function mightOverwinter({ start }: GrownStart, from: DayNumber, to: DayNumber): boolean {
  const { days } = start.summary.neckFall;
  if (!start.winters || start.isGood || days === null) return false;
  return overlaps(days.p50, overwinteredReachDays, from, to);
}

/** Whether sets or seed can go into a bed so that leaves are pulled in the gap. */
function hasGreen(site: Site, from: DayNumber, to: DayNumber): boolean {
  for (let day = from - greenDays.to; day <= to - greenDays.from; day += 7) {
    if (hindranceOn(site, 'sets', day) === null || hindranceOn(site, 'direct-seed', day) === null)
      return true;
  }
  return false;
}

function hasShallots(site: Site, from: DayNumber, to: DayNumber): boolean {
  if (Math.min(...site.climate.tempMeanC) > shallotWinterC) return false;
  const longest = site.climate.latitudeDeg < 0 ? 354 : 171;
  const ahead = longest + shallotsFromDays - climateDayOf(from);
  return overlaps(from + ahead, shallotsKeepDays, from, to);
}

/** Whether days that begin on a day of every year and last so long share one with others. */
function overlaps(begin: DayNumber, lastDays: number, from: DayNumber, to: DayNumber): boolean {
  const since = (((from - begin) % climateYearDays) + climateYearDays) % climateYearDays;
  return since <= lastDays || climateYearDays - since <= to - from;
}
