import { type FeedChance, type FeedProduct, feedLeaves } from '../bed/index.ts';
import { climateDayOf, climateYearDays, type DayNumber } from '../calendar/index.ts';
import { dailyCurve } from '../climate/index.ts';
import type { DateSpread, Plan, SeasonSummary, Site } from '../season/index.ts';
import { leafDates } from './leaf-dates.ts';

/** A winter that stops growth so long washes out what was given before it, days (common practice, no source). */
const longRestDays = 42;

/** The days on which a crop may be fed, in their order: before it is in its bed, then by its leaves. */
export function feedChances(
  site: Site,
  plan: Plan,
  summary: SeasonSummary,
  product: FeedProduct,
  stopBy: DayNumber | null,
): FeedChance[] {
  const bedded = beddedOn(plan, summary);
  if (bedded === null) return [];
  const dates = leafDates(site, plan);
  const byLeaves = feedLeaves.flatMap((leaves): FeedChance[] => {
    const { days, share } = dates[leaves];
    return days && share >= 0.5 && days.p50 > bedded ? [{ leaves, day: days.p50 }] : [];
  });
  const rest = restEnd(site, bedded, stopBy);
  const before = { leaves: null, day: bedded - product.leadDays };
  if (rest === null) return [before, ...byLeaves];
  const onward = { leaves: leavesOn(dates, rest), day: rest };
  const later = byLeaves.filter(({ day }) => day > rest);
  // what lies in the ground for long is dug in before all the same
  return product.mostFeeds === 1 ? [before] : [onward, ...later];
}

/** The day on which the crop is sown or planted in its bed; null where seedlings never get there. */
function beddedOn({ startDay }: Plan, { plantOut }: SeasonSummary): DayNumber | null {
  return plantOut ? (plantOut.days?.p50 ?? null) : startDay;
}

/** Growth after a long winter's rest that begins before bulbs do; null where there is none. */
function restEnd(site: Site, bedded: DayNumber, stopBy: DayNumber | null): DayNumber | null {
  const { growthBaseC } = site.values.growth;
  const mean = dailyCurve(site.climate.tempMeanC, new Float64Array(climateYearDays));
  const last = Math.min(stopBy ?? Number.POSITIVE_INFINITY, bedded + climateYearDays);
  let rested = 0;
  for (let day = bedded; day < last; day++) {
    if (mean[climateDayOf(day)] < growthBaseC) rested++;
    else if (rested >= longRestDays) return day;
    else rested = 0;
  }
  return null;
}

/** Leaves that a crop has made on a day in most seasons. */
function leavesOn(dates: readonly DateSpread[], day: DayNumber): number {
  return dates.findLastIndex(({ days, share }) => days !== null && share >= 0.5 && days.p50 <= day);
}
