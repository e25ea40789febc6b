import type { DayNumber } from '../calendar/index.ts';
import { type GrowingOptions, isAutumnStart, surveyWays, waysOf } from '../choice/index.ts';
import {
  classOfType,
  type DayLengthClass,
  dayLengthClasses,
  hoursFromHome,
  type OnionType,
  type StartMethod,
  startMethods,
  type Verdict,
} from '../plant/index.ts';
import type { Site } from '../season/index.ts';

/** What onions of one class, started one way, do at a place at their best start of the year. */
export type AtlasEntry = {
  class: DayLengthClass;
  /** What a packet of the class holds for that start. */
  type: OnionType;
  start: StartMethod;
  /** Whether shops have this type and growers know it at the place's latitude. */
  isAtHome: boolean;
  startDay: DayNumber;
  /** Seasons that end well, 0…1. */
  goodShare: number;
  outcome: Verdict;
  gamble: boolean;
  /** Middle of the seasons in which tops go over; null where none do. */
  neckFallDay: DayNumber | null;
  /** Of the median plant, middle of the seasons in which a bulb forms, mm; null where none does. */
  bulbDiameterMm: number | null;
  /** What orders the entries; see `worth`. */
  worth: number;
};

/** What is told of an entry: all but what orders them. */
export type AtlasFigures = Omit<AtlasEntry, 'worth'>;

/** Every class started every way, at its best start from a day on: classes in their order, ways in theirs within each. */
export function atlasEntries(site: Site, from: DayNumber, options: GrowingOptions = {}): AtlasEntry[] {
  return dayLengthClasses.flatMap((dayLengthClass) =>
    startMethods.map((start): AtlasEntry => {
      const ways = waysOf(site, { class: dayLengthClass }, [start]);
      const { summary, worth } = surveyWays(site, ways, from, options).best();
      const { type, startDay } = summary.plan;
      return {
        class: classOfType[type],
        type,
        start,
        isAtHome:
          hoursFromHome(type, site.longestDayH, isAutumnStart(startDay, site.climate.latitudeDeg)) === 0,
        startDay,
        goodShare: summary.seasonShares.good,
        outcome: summary.outcome,
        gamble: summary.gamble,
        neckFallDay: summary.neckFall.days?.p50 ?? null,
        bulbDiameterMm: summary.bulbDiameterMm?.p50 ?? null,
        worth,
      };
    }),
  );
}

/** The entries asked for; null: any. */
export type AtlasAsked = { class: DayLengthClass | null; start: StartMethod | null };

/** The entry that leads at a point among those asked for. @param entries of one point, not empty */
export function leadingEntry(entries: readonly AtlasEntry[], asked: AtlasAsked): AtlasEntry {
  const among = entries.filter(
    (entry) =>
      (asked.class === null || entry.class === asked.class) &&
      (asked.start === null || entry.start === asked.start),
  );
  return among.reduce((best, entry) => (entry.worth > best.worth ? entry : best));
}

/** The entry that leads at a place among those asked for. */
export function leadAt(
  site: Site,
  from: DayNumber,
  asked: AtlasAsked,
  options: GrowingOptions = {},
): AtlasEntry {
  return leadingEntry(atlasEntries(site, from, options), asked);
}
