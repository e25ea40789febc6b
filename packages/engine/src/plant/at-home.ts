import type { OnionType } from './kinds.ts';

/**
 * Longest days of the year, sun-up, h, between which shops have a type and growers know it (limits memory: short-day
 * kinds to about 40°, intermediate ones to about 44°, early long-day kinds from about 31° to 46°).
 */
const homeLongestDayH: Readonly<Record<OnionType, readonly [from: number, to: number]>> = {
  'tropical-short': [12, 14.2],
  short: [12, 15.4],
  intermediate: [13.4, 15.6],
  'early-long': [13.8, 16.2],
  'northern-long': [14.8, 24],
};

/** By how much the longest day of a place misses those under which a type is at home, h; 0 where it is. */
export function hoursFromHome(type: OnionType, longestDayH: number): number {
  const [from, to] = homeLongestDayH[type];
  return Math.max(0, from - longestDayH, longestDayH - to);
}
