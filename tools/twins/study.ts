import {
  type Belief,
  type DailyRecord,
  type DayNumber,
  type Draw,
  drawOf,
  learnSeason,
  learntParameters,
  learntSite,
  type Observation,
  openSite,
  type Plan,
  randomSource,
  runPlan,
  type Site,
  type Spread,
  usualSpread,
  usualValues,
  yearlyShare,
} from '../../packages/engine/src/index.ts';
import type { Setting } from './places.ts';
import { liveThrough, notesOf, recordUntil, type Twin } from './twin.ts';

/** What is known on the day bulbs start. */
export const knowns = ['leaves', 'widths', 'second-year'] as const;
export type Known = (typeof knowns)[number];

export type Forecast = { errorDays: number; widthDays: number; holds: boolean };

/** One twin: the forecasts by onset with nothing seen and with what was, each in the same weather. */
export type Pair = {
  setting: string;
  measured: boolean;
  known: Known;
  without: Forecast;
  with: Forecast;
  effectiveDraws: number;
};

const year = 2027;
const years = 30;
const planSeed = 1;

/** How far the truth strays from the middle of the kind, as a share of what answers allow for. */
export type Truth = Readonly<Record<(typeof learntParameters)[number], number>>;

export const allowed: Truth = usualSpread;

/** All pairs of a number of twins at a setting. */
export function studyOf(setting: Setting, at: number, count: number, truth: Truth): Pair[] {
  const pairs: Pair[] = [];
  for (let number = 0, tried = 0; number < count && tried < 4 * count; tried++) {
    const random = randomSource(1000 * at + tried + 17);
    // what lasts of the onion at its place, and what each of two years adds
    const lasting = learntParameters.map(() => random.normal());
    const drawIn = (): Draw => {
      const [criticalH, ripening, phyllochron, growth] = learntParameters.map((of, i) => {
        const z = Math.sqrt(1 - yearlyShare ** 2) * lasting[i] + yearlyShare * random.normal();
        return usualValues[of] + truth[of] * z;
      });
      return drawOf({ criticalH, ripening, phyllochron, growth });
    };
    const last = liveThrough(setting, year - 1, drawIn(), 5000 + 100 * at + 2 * tried);
    const twin = liveThrough(setting, year, drawIn(), 5001 + 100 * at + 2 * tried);
    if (!last || !twin) continue;
    number++;
    pairs.push(...pairsOf(setting, last, twin, random));
  }
  return pairs;
}

function pairsOf(setting: Setting, last: Twin, twin: Twin, random: ReturnType<typeof randomSource>): Pair[] {
  const notes = notesOf(twin, random);
  const notesLast = notesOf(last, random);
  const belief = learnSeason(
    siteWith(setting, last.record),
    last.plan,
    [...notesLast.leaves, ...notesLast.tops],
    last.fellDay + 20,
  ).belief;
  // the first visit that finds bulbs tells of onset
  const onsetSeen = twin.onsetDay + 10;
  return [true, false].flatMap((measured) => {
    const siteOn = (day: DayNumber) => siteWith(setting, measured ? recordUntil(twin.record, day) : null);
    const onOnset = siteOn(twin.onsetDay);
    const onSeen = siteOn(onsetSeen);
    const pair = (
      known: Known,
      site: Site,
      observations: Observation[],
      asOf: DayNumber,
      believed: Belief | null,
    ): Pair | null => {
      const learnt = learnSeason(site, twin.plan, observations, asOf, believed);
      const without = forecast(site, twin);
      const told = forecast(learntSite(site, learnt, believed), twin);
      return without && told
        ? {
            setting: setting.name,
            measured,
            known,
            without,
            with: told,
            effectiveDraws: learnt.effectiveDraws,
          }
        : null;
    };
    return [
      pair('leaves', onOnset, notes.leaves, twin.onsetDay, null),
      pair('widths', onSeen, [...notes.leaves, ...notes.widths], onsetSeen, null),
      pair('second-year', onOnset, notes.leaves, twin.onsetDay, belief),
    ].filter((found) => found !== null);
  });
}

function siteWith({ climate }: Setting, record: DailyRecord | null): Site {
  return openSite({ climate, years, seed: planSeed, record });
}

function forecast(site: Site, { plan, fellDay }: { plan: Plan; fellDay: DayNumber }): Forecast | null {
  const days: Spread | null = runPlan(site, plan).neckFall.days;
  if (!days) return null;
  return {
    errorDays: days.p50 - fellDay,
    widthDays: days.p90 - days.p10,
    holds: days.p10 <= fellDay && fellDay <= days.p90,
  };
}
