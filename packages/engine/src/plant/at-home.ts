import type { OnionType } from './kinds.ts';

type Span = readonly [fromH: number, toH: number];

/**
 * Longest days of the year, sun-up, h, between which shops have a type and growers know it (limits memory: short-day
 * kinds to about 40°, intermediate ones to about 44°, early long-day kinds from about 38° to 46°, northern ones from 40°).
 */
const homeLongestDayH: Readonly<Record<OnionType, Span>> = {
  'tropical-short': [12, 14.2],
  short: [12, 15.4],
  intermediate: [13.4, 15.6],
  'early-long': [14.8, 16.2],
  'northern-long': [15, 24],
};

/** Kinds started in autumn to winter are at home farther north (common practice, no source: Britain, the Pacific Northwest, Japan). */
const winteringLongestDayH: Partial<Record<OnionType, Span>> = {
  intermediate: [13.4, 18],
  'early-long': [14.8, 18.5],
};

/**
 * By how much the longest day of a place misses those under which a type is at home, h; 0 where it is.
 *
 * @param winters whether the crop is started in autumn to stand the winter
 */
export function hoursFromHome(type: OnionType, longestDayH: number, winters: boolean): number {
  const [from, to] = (winters && winteringLongestDayH[type]) || homeLongestDayH[type];
  return Math.max(0, from - longestDayH, longestDayH - to);
}
