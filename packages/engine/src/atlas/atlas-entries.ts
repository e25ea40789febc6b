import type { DayNumber } from '../calendar/index.ts';
import {
  type BestStart,
  type FortnightRace,
  fortnightRace,
  type GrowingOptions,
  isAutumnStart,
  waysOf,
} from '../choice/index.ts';
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

/**
 * Every class started every way, at its best start of a fortnight from a day on: classes in their order, ways in theirs
 * within each. All figures are those of that start over every year of the site (exact: as `runPlan` has them); that it is
 * the best of the 26 is a rule of thumb, see `fortnightRace`.
 */
export function atlasEntries(site: Site, from: DayNumber, options: GrowingOptions = {}): AtlasEntry[] {
  return races(site, from, anyEntry, options).map((race) => entryOf(site, race.best()));
}

/** An entry is given up when all it may come to lies so far behind one that is known, in good seasons of one. */
const farBehind = 0.2;

/**
 * The entry that leads at a place: `leadingEntry` of all entries, where the others are followed up only as far as they may
 * still lead.
 */
export function leadAt(
  site: Site,
  from: DayNumber,
  asked: AtlasAsked,
  options: GrowingOptions = {},
): AtlasEntry {
  const among = races(site, from, asked, options);
  for (;;) {
    const known = Math.max(...among.map((race) => (race.isOver() ? race.hope() : Number.NEGATIVE_INFINITY)));
    const next = among
      .filter((race) => !race.isOver() && race.hope() + farBehind >= known)
      .reduce<FortnightRace | null>((a, b) => (a === null || b.hope() > a.hope() ? b : a), null);
    if (!next) break;
    next.goOn();
  }
  const best = among.filter((race) => race.isOver()).reduce((a, b) => (b.hope() > a.hope() ? b : a));
  return entryOf(site, best.best());
}

function races(site: Site, from: DayNumber, asked: AtlasAsked, options: GrowingOptions): FortnightRace[] {
  const classes = dayLengthClasses.filter((one) => asked.class === null || asked.class === one);
  const starts = startMethods.filter((one) => asked.start === null || asked.start === one);
  return classes.flatMap((one) =>
    starts.map((start) => fortnightRace(site, waysOf(site, { class: one }, [start]), from, options)),
  );
}

function entryOf(site: Site, { summary, worth }: BestStart): AtlasEntry {
  const { type, start, startDay } = summary.plan;
  const winters = isAutumnStart(startDay, site.climate.latitudeDeg);
  return {
    class: classOfType[type],
    type,
    start,
    isAtHome: hoursFromHome(type, site.longestDayH, winters) === 0,
    startDay,
    goodShare: summary.seasonShares.good,
    outcome: summary.outcome,
    gamble: summary.gamble,
    neckFallDay: summary.neckFall.days?.p50 ?? null,
    bulbDiameterMm: summary.bulbDiameterMm?.p50 ?? null,
    worth,
  };
}

/** The entries asked for; null: any. */
export type AtlasAsked = { class: DayLengthClass | null; start: StartMethod | null };

const anyEntry: AtlasAsked = { class: null, start: null };

/** The entry that leads at a point among those asked for. @param entries of one point, not empty */
export function leadingEntry(entries: readonly AtlasEntry[], asked: AtlasAsked): AtlasEntry {
  const among = entries.filter(
    (entry) =>
      (asked.class === null || entry.class === asked.class) &&
      (asked.start === null || entry.start === asked.start),
  );
  return among.reduce((best, entry) => (entry.worth > best.worth ? entry : best));
}
