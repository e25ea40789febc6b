import { climateDayOf, climateYearDays, type DayNumber } from '../calendar/index.ts';
import {
  type GrowingOptions,
  hindranceOn,
  isAutumnStart,
  type StartScan,
  scanStarts,
  startToday,
  type Way,
  waysOf,
} from '../choice/index.ts';
import { dayLengthClasses, hoursFromHome, startMethods } from '../plant/index.ts';
import {
  type Plan,
  planDefaults,
  type Runner,
  type SeasonSummary,
  type Site,
  startedOn,
  summarise,
} from '../season/index.ts';

/** One way of growing at one of its starts, with a runner to try its years again. */
export type LotStart = {
  plan: Plan;
  summary: SeasonSummary;
  runner: Runner;
  /** A crop that winters in its bed. */
  winters: boolean;
  /** Good often enough to be planted for the kitchen; the others only tell what a gap is owed to. */
  isGood: boolean;
};

/** Starts of which fewer seasons end well are not planted for the kitchen. */
const leastGoodShare = 0.5;
/** Other starts of a way are told only where their harvests lie so far apart, days. */
const harvestsApart = 45;
const mostOthers = 3;
/** A best start that went by within so many days may still be made up for today. */
const lately = 120;
/** Kinds from farther off than this are left to those who ask for them, hours of the longest day. */
const strangeFromH = 0.5;

/** Ways of growing that gardeners of the place know, each with the plant of its type. */
export function kitchenWays(site: Site): Way[] {
  return dayLengthClasses.flatMap((dayLengthClass) => waysOf(site, { class: dayLengthClass }, startMethods));
}

/** The best start of a way, as every page tells it, today's where that has just gone by and today is in time; and others of its year that give onions at another time. */
export function lotStartsOf(site: Site, way: Way, today: DayNumber, options: GrowingOptions): LotStart[] {
  const { isUsual, ...onion } = way;
  const plan = startedOn({ ...planDefaults, ...options, ...onion }, today);
  const scan = scanStarts(site, plan, today, isUsual);
  const best = lotStart(site, scan, stillInTime(site, scan, today) ?? scan.best().summary);
  const starts = [best];
  const harvests = harvestsOf(best);
  for (const { startDay, neckFallDay } of othersOf(site, scan)) {
    if (starts.length > mostOthers) break;
    const harvest = climateDayOf(neckFallDay);
    if (harvests.some((other) => daysBetween(other, harvest) < harvestsApart)) continue;
    scan.runner.moveTo(startDay, null);
    const start = lotStart(site, scan, summarise(site, startedOn(scan.plan, startDay), scan.runner));
    if (!start.isGood) continue;
    starts.push(start);
    harvests.push(harvest);
  }
  return starts;
}

/** The start of today where the year's best went by lately and it is still in time: nobody waits a year for a better week. */
function stillInTime(site: Site, scan: StartScan, today: DayNumber): SeasonSummary | null {
  const bestDay = scan.best().summary.plan.startDay;
  if (bestDay - today < climateYearDays - lately) return null;
  if (startToday(site, scan, today).stillGoodUntil === null) return null;
  scan.runner.moveTo(today, null);
  return summarise(site, startedOn(scan.plan, today), scan.runner);
}

/** Fortnights of the year that end well in the mean climate, the most worth first. */
function othersOf(site: Site, { mean, weeks, plan }: StartScan) {
  return mean
    .filter(({ verdict, neckFallDay }) => verdict === 'good' && neckFallDay !== null)
    .map(({ week, startDay, neckFallDay, worth }) => ({
      worth,
      startDay: weeks[week],
      neckFallDay: (neckFallDay as DayNumber) + weeks[week] - startDay,
    }))
    .filter(({ startDay }) => hindranceOn(site, plan.start, startDay) === null)
    .sort((a, b) => b.worth - a.worth);
}

function lotStart(site: Site, { runner }: StartScan, summary: SeasonSummary): LotStart {
  const { plan, seasonShares } = summary;
  const { startDay, type, start } = plan;
  const winters = isAutumnStart(startDay, site.climate.latitudeDeg);
  const isGood =
    seasonShares.good >= leastGoodShare &&
    hindranceOn(site, start, startDay) === null &&
    hoursFromHome(type, site.longestDayH, winters) <= strangeFromH;
  return { plan, summary, runner, winters, isGood };
}

function harvestsOf({ summary }: LotStart): number[] {
  const { days } = summary.neckFall;
  return days === null ? [] : [climateDayOf(days.p50)];
}

/** Days between two days of the year, by the shorter way round. */
function daysBetween(a: number, b: number): number {
  const apart = Math.abs(a - b);
  return Math.min(apart, climateYearDays - apart);
}
