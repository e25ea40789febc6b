import { climateYearDays, type DayNumber, daysSinceLongest } from '../calendar/index.ts';
import type { DayLengthClass, OnionType, StartMethod } from '../plant/index.ts';
import type { Site } from '../season/index.ts';

/** Within the tropics short-day onions on sale are tropical types, h of longest sun-up day at 23.5° (computed). */
const tropicsLongestH = 13.6;
/** Where the longest day passes this, long-day onions on sale are the northern keepers (about 43° of latitude; memory). */
const northernLongestH = 15.4;

/** A type that a packet of a class may hold at a place, and the days on which a start of it is usual. */
export type ClassUse = {
  type: OnionType;
  /** Whether growers start it on that day. */
  isUsual: (startDay: DayNumber) => boolean;
};

const always = () => true;

/**
 * What packets of a class hold at this place, by use: no day has two types. Long-day seed, plants and sets started in
 * autumn are kinds bred to winter, which start their bulbs sooner than the keepers of spring; long-day sets of spring
 * are keepers everywhere (common practice, no source).
 */
export function usesOfClass(site: Site, dayLengthClass: DayLengthClass, start: StartMethod): ClassUse[] {
  switch (dayLengthClass) {
    case 'short':
      return [{ type: site.longestDayH < tropicsLongestH ? 'tropical-short' : 'short', isUsual: always }];
    case 'intermediate':
      return [{ type: 'intermediate', isUsual: always }];
    case 'long': {
      const isKeeper = start === 'sets' || site.longestDayH >= northernLongestH;
      if (!isKeeper) return [{ type: 'early-long', isUsual: always }];
      const isAutumn = (day: DayNumber) => isAutumnStart(day, site.climate.latitudeDeg);
      return [
        { type: 'northern-long', isUsual: (day) => !isAutumn(day) },
        { type: 'early-long', isUsual: isAutumn },
      ];
    }
  }
}

/** The type that a packet of a class most likely holds at this place, started this way on this day. */
export function typeForClass(
  site: Site,
  dayLengthClass: DayLengthClass,
  start: StartMethod,
  startDay: DayNumber,
): OnionType {
  const [first, ...others] = usesOfClass(site, dayLengthClass, start);
  return (others.find(({ isUsual }) => isUsual(startDay)) ?? first).type;
}

/** A crop started from a week after the longest day to the shortest is meant to winter. */
const afterLongestDays = 7;

/** Whether a day lies in the half of the year in which crops are started to stand through the winter. */
export function isAutumnStart(day: DayNumber, latitudeDeg: number): boolean {
  const since = daysSinceLongest(day, latitudeDeg);
  return since >= afterLongestDays && since < climateYearDays / 2;
}
