import { civilDate, type DayNumber, dayNumber } from '../calendar/index.ts';
import { surveyWays, worth } from '../choice/index.ts';
import { type OnionType, onionTypes } from '../plant/index.ts';
import {
  neededSunUpH,
  type Plan,
  planDefaults,
  runPlan,
  type SeasonSummary,
  type Site,
  startedOn,
} from '../season/index.ts';

/** When the sun is up long enough for a kind; the first and the last day of it, counted from midwinter on. */
export type LongEnough = 'always' | 'never' | { from: DayNumber; to: DayNumber };

/** One kind sown at a made-up place. */
export type KindSown = {
  summary: SeasonSummary;
  /** Sun-up hours that start its bulbs, see `neededSunUpH`. */
  needSunUpH: number;
  longEnough: LongEnough;
};

/** What the sun does over a year. */
export type SunOverYear = {
  longestH: number;
  shortestH: number;
  /** Days on which it does not set, and on which it does not rise. */
  upDays: number;
  downDays: number;
};

const start = 'direct-seed';
const yearDays = 365;

/**
 * First day of the gardener's year that holds a day: 1 August north of the equator, 1 February south of it, so that autumn
 * sowings and the spring sowings after them stand in one row.
 */
export function sowingYear(day: DayNumber, latitudeDeg: number): DayNumber {
  const { year } = civilDate(day);
  const first = dayNumber(year, latitudeDeg < 0 ? 2 : 8, 1);
  return day >= first ? first : dayNumber(year - 1, latitudeDeg < 0 ? 2 : 8, 1);
}

/** A kind sown in place in an open bed, watered. */
export function sownInPlace(type: OnionType, startDay: DayNumber): Plan {
  return startedOn({ ...planDefaults, type, start }, startDay);
}

/** All kinds sown in place on one day, in the order of `onionTypes`. */
export function kindsSown(site: Site, startDay: DayNumber): KindSown[] {
  return onionTypes.map((type) => {
    const summary = runPlan(site, sownInPlace(type, startDay));
    const needSunUpH = neededSunUpH(site, summary.needPhotoperiodH);
    return { summary, needSunUpH, longEnough: longEnough(site, startDay, needSunUpH) };
  });
}

/** The one of them that is worth most to a gardener there. */
export function bestOfSown(site: Site, kinds: readonly KindSown[]): KindSown {
  return kinds.reduce((a, b) => (worth(site, b.summary) > worth(site, a.summary) ? b : a));
}

function longEnough(site: Site, startDay: DayNumber, needH: number): LongEnough {
  const midwinter = midwinterOf(startDay, site.climate.latitudeDeg);
  const hours = sunUp(site, midwinter);
  const from = hours.findIndex((h) => h >= needH);
  if (from < 0) return 'never';
  if (hours.every((h) => h >= needH)) return 'always';
  return { from: midwinter + from, to: midwinter + hours.findLastIndex((h) => h >= needH) };
}

/** Solstice of the gardener's year that holds a day, to a day or two: 21 December, south of the equator 21 June. */
function midwinterOf(day: DayNumber, latitudeDeg: number): DayNumber {
  const { year } = civilDate(sowingYear(day, latitudeDeg));
  return dayNumber(year, latitudeDeg < 0 ? 6 : 12, 21);
}

function sunUp(site: Site, from: DayNumber): Float64Array {
  const { firstDay, sunUpH } = site.dayTable(civilDate(from).year);
  return sunUpH.subarray(from - firstDay, from - firstDay + yearDays);
}

/** What the sun does at a site over the year in which a day lies. */
export function sunOverYear(site: Site, day: DayNumber): SunOverYear {
  const hours = sunUp(site, midwinterOf(day, site.climate.latitudeDeg));
  const count = (exactly: number) => hours.reduce((days, h) => days + (h === exactly ? 1 : 0), 0);
  return {
    longestH: Math.max(...hours),
    shortestH: Math.min(...hours),
    upDays: count(24),
    downDays: count(0),
  };
}

/** The kind that does best when each is sown in place on its own best day; `isGood`: in most years it comes good. */
export type BestAtLatitude = { summary: SeasonSummary; isGood: boolean };

/** The kind that does best at a site. @param from the starts of the year from this day on are tried */
export function bestSown(site: Site, from: DayNumber): BestAtLatitude {
  const ways = onionTypes.map((type) => ({ type, traits: null, start, isUsual: () => true }) as const);
  const { summary } = surveyWays(site, ways, from).best();
  return { summary, isGood: summary.outcome === 'good' && !summary.gamble };
}
