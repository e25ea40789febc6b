import type { DayLengthClass, OnionType } from '../plant/index.ts';
import type { Site } from '../season/index.ts';

/** Within the tropics short-day onions on sale are tropical types, h of longest sun-up day at 23.5° (computed). */
const tropicsLongestH = 13.6;
/** Where the longest day passes this, long-day onions on sale are the northern keepers (about 43° of latitude; memory). */
const northernLongestH = 15.4;

/** The type that a packet of a class most likely holds at this place. */
export function typeForClass(site: Site, dayLengthClass: DayLengthClass): OnionType {
  switch (dayLengthClass) {
    case 'short':
      return site.longestDayH < tropicsLongestH ? 'tropical-short' : 'short';
    case 'intermediate':
      return 'intermediate';
    case 'long':
      return site.longestDayH < northernLongestH ? 'early-long' : 'northern-long';
  }
}
