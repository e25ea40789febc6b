import { type DayNumber, daysSinceLongest } from '../calendar/index.ts';
import { type StartMethod, startWays } from '../plant/index.ts';
import type { Site } from '../season/index.ts';

/**
 * Days after the longest day on which sound sets and young plants are to be had (common practice, no source): sets are
 * lifted and dried by late summer, and have sprouted or dried up in their store three weeks before midsummer; plants are
 * sold for autumn and spring.
 */
const saleFrom = 60;
const saleTo = 345;
/** Where the longest day is shorter than this, about 35° of latitude, they are raised in more than one season, h. */
const manyCropsBelowH = 14.5;

/** Whether what a start needs is at hand, or can usually be bought on a day. Seed always can. */
export function isOnSale(
  { climate, longestDayH, atHand }: Site,
  start: StartMethod,
  day: DayNumber,
): boolean {
  if (atHand.includes(start) || startWays[start].from === 'seed' || longestDayH < manyCropsBelowH)
    return true;
  const since = daysSinceLongest(day, climate.latitudeDeg);
  return since >= saleFrom && since <= saleTo;
}
