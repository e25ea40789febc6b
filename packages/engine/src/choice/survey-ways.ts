import type { DayNumber } from '../calendar/index.ts';
import type { SeasonSummary, Site, TodayAnswer } from '../season/index.ts';
import { planDefaults, startedOn, summarise } from '../season/index.ts';
import type { GrowingOptions } from './growing-options.ts';
import { once } from './once.ts';
import { type BestStart, type StartScan, scanStarts } from './start-scan.ts';
import { startToday } from './start-today.ts';
import { isSameUse, type Way } from './ways.ts';
import { worth } from './worth.ts';

/** The best that can be started today: its season from its best day while it is in time, or from today where that has gone by. */
export type StartNow = { summary: SeasonSummary; until: DayNumber };

/** Ways of growing at a place, looked into as far as asked: each answer is worked out once. */
export type WaySurvey = {
  /** The best start of the year, the same whatever the day; `among`: only ways of which that holds. */
  best: (among?: (way: Way) => boolean) => BestStart;
  /** What each onion, started each way, is worth today. */
  today: () => TodayAnswer[];
  /** Null where none of these ways is in time today. */
  now: (among?: (way: Way) => boolean) => StartNow | null;
};

type Seen = {
  way: Way;
  scan: StartScan;
  today: () => TodayAnswer;
};

/** Ways of growing that fall so far behind at a first look are not followed up, in good seasons of one. */
const farBehind = 0.15;

/** Looks over ways of growing for the starts from today on. */
export function surveyWays(
  site: Site,
  ways: readonly Way[],
  today: DayNumber,
  options: GrowingOptions = {},
): WaySurvey {
  const seen = ways.map((way): Seen => {
    const { isUsual, ...onion } = way;
    const plan = startedOn({ ...planDefaults, ...options, ...onion }, today);
    const scan = scanStarts(site, plan, today, isUsual);
    return {
      way,
      scan,
      today: once(() => startToday(site, scan, today)),
    };
  });
  const all = () => true;
  return {
    best: (among = all) => bestOf(seen.filter(({ way }) => among(way))).scan.best(),
    today: () => {
      const uses = seen.filter(({ way }, at) => seen.findIndex((other) => isSameUse(other.way, way)) === at);
      return uses.map(({ way }) =>
        joined(
          seen.filter((other) => isSameUse(other.way, way)),
          today,
        ),
      );
    },
    now: (among = all) =>
      seen
        .filter(({ way }) => among(way) && way.isUsual(today))
        .flatMap((way) => startNow(site, way, today))
        .reduce<StartNow | null>(
          (a, b) => (a === null || worth(site, b.summary) > worth(site, a.summary) ? b : a),
          null,
        ),
  };
}

function bestOf(ways: readonly Seen[]): Seen {
  const ahead = Math.max(...ways.map(({ scan }) => scan.glance())) - farBehind;
  return ways
    .filter(({ scan }) => scan.glance() >= ahead)
    .reduce((a, b) => (b.scan.best().worth > a.scan.best().worth ? b : a));
}

/** One answer for what autumn and spring sow different types of: what is usual today, else the next to come. */
function joined(uses: readonly Seen[], day: DayNumber): TodayAnswer {
  const now = (uses.find(({ way }) => way.isUsual(day)) ?? uses[0]).today();
  if (now.stillGoodUntil !== null) return now;
  const next = uses.flatMap(({ today }) => today().nextFrom ?? []);
  return { ...now, nextFrom: next.length > 0 ? Math.min(...next) : null };
}

/** A best day further off than this is not waited for while today is in time too, days. */
const soonDays = 60;

/** Its best day while that comes soon, else today; the best day after all where today falls short. Nothing where it is not in time. */
function startNow(site: Site, { scan, today: answer }: Seen, today: DayNumber): StartNow[] {
  const { stillGoodUntil: until } = answer();
  if (until === null) return [];
  const { summary } = scan.best();
  const { startDay } = summary.plan;
  if (startDay <= Math.min(until, today + soonDays)) return [{ summary, until }];
  scan.runner.moveTo(today, null);
  const now = summarise(site, startedOn(scan.plan, today), scan.runner);
  if (now.outcome === 'good' && !now.gamble) return [{ summary: now, until }];
  return startDay <= until ? [{ summary, until }] : [];
}
