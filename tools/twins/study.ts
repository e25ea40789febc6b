import {
  type Belief,
  beliefSite,
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
  type RandomSource,
  randomSource,
  runPlan,
  type Site,
  usualBelief,
  usualSpread,
  usualValues,
  valuesOf,
  yearlyShare,
} from '../../packages/engine/src/index.ts';
import type { Setting } from './places.ts';
import { liveThrough, notesOf, recordUntil, type Twin } from './twin.ts';

/**
 * What a forecast of the day that bulbs start knows: nothing but the plan; the weather till then; leaf counts, with the
 * weather and without; what callipers found besides, up to the first visit that sees bulbs; what the year before told.
 * The last knows all but how fast bulbs ripen and the weather to come: no look at leaves can tell more.
 */
export const knowns = [
  'plan',
  'weather',
  'leaves-alone',
  'leaves',
  'widths',
  'second-year',
  'all-but-ripening',
] as const;
export type Known = (typeof knowns)[number];

/** How far a forecast's middle was from the day that tops went over, and whether its 8 in 10 held it. */
type Forecast = { errorDays: number; widthDays: number; holds: boolean };

export type TwinForecasts = {
  setting: string;
  forecasts: Record<Known, Forecast>;
  /** Of the forecast with leaf counts and weather. */
  effectiveDraws: number;
};

const year = 2027;
const years = 30;
const planSeed = 1;
/** Bulbs are seen at the first visit after they start, this many days at most. */
const seenAfterDays = 10;

/** How far twins stray from the middle of their kind: standard deviations in the parameters' own units. */
export type Truth = Readonly<Record<(typeof learntParameters)[number], number>>;

/** As far as every answer allows for: kinds, the places' own ways and what the model misses. */
export const allowed: Truth = usualSpread;
/** As plants of a kind differ by themselves (memory; the first bounds of the model's own parameters). */
export const plantsAlone: Truth = { criticalH: 0.25, ripening: 0.06, phyllochron: 0.08, growth: 0.25 };

/** Twins of a setting; those whose tops never went over are no twins. @param at number of the setting, for its chances */
export function studyOf(setting: Setting, at: number, count: number, truth: Truth): TwinForecasts[] {
  const found: TwinForecasts[] = [];
  for (let tried = 0; found.length < count && tried < 4 * count; tried++) {
    const random = randomSource(1000 * at + tried + 17);
    const drawIn = hidden(truth, random);
    const last = liveThrough(setting, year - 1, drawIn(), 5000 + 1000 * at + 2 * tried);
    const twin = liveThrough(setting, year, drawIn(), 5001 + 1000 * at + 2 * tried);
    const forecasts = last && twin && forecastsOf(setting, last, twin, random);
    if (forecasts) found.push(forecasts);
  }
  return found;
}

/** Gives the draws of one year after another: what lasts of an onion at its place is the same, the rest is new. */
export function hidden(truth: Truth, random: RandomSource): () => Draw {
  const lasting = learntParameters.map(() => random.normal());
  return () => {
    const [criticalH, ripening, phyllochron, growth] = learntParameters.map((of, i) => {
      const z = Math.sqrt(1 - yearlyShare ** 2) * lasting[i] + yearlyShare * random.normal();
      return usualValues[of] + truth[of] * z;
    });
    return drawOf({ criticalH, ripening, phyllochron, growth });
  };
}

/** Null where some forecast sees no fall of tops. */
function forecastsOf(setting: Setting, last: Twin, twin: Twin, random: RandomSource): TwinForecasts | null {
  const notes = notesOf(twin, random);
  const notesLast = notesOf(last, random);
  const { plan, onsetDay } = twin;
  const seenDay = onsetDay + seenAfterDays;
  const bare = siteWith(setting, null);
  const met = siteWith(setting, recordUntil(twin.record, onsetDay));
  const metTillSeen = siteWith(setting, recordUntil(twin.record, seenDay));
  const { belief } = learnSeason(
    siteWith(setting, last.record),
    last.plan,
    [...notesLast.leaves, ...notesLast.tops],
    last.fellDay + 3 * seenAfterDays,
  );
  const learn = (site: Site, seen: Observation[], asOf: DayNumber, believed: Belief | null = null) => {
    const learnt = learnSeason(site, plan, seen, asOf, believed);
    return { site: learntSite(site, learnt, believed), learnt };
  };
  const leaves = learn(met, notes.leaves, onsetDay);
  const sites: Record<Known, Site> = {
    plan: bare,
    weather: met,
    'leaves-alone': learn(bare, notes.leaves, onsetDay).site,
    leaves: leaves.site,
    widths: learn(metTillSeen, [...notes.leaves, ...notes.widths], seenDay).site,
    'second-year': learn(met, notes.leaves, onsetDay, belief).site,
    'all-but-ripening': knownButRipening(met, twin.draw),
  };
  const forecasts = knowns.map((known) => [known, forecast(sites[known], plan, twin.fellDay)] as const);
  if (forecasts.some(([, found]) => found === null)) return null;
  return {
    setting: setting.name,
    forecasts: Object.fromEntries(forecasts) as Record<Known, Forecast>,
    effectiveDraws: leaves.learnt.effectiveDraws,
  };
}

export function siteWith({ climate }: Setting, record: DailyRecord | null): Site {
  return openSite({ climate, years, seed: planSeed, record });
}

function knownButRipening(site: Site, draw: Draw): Site {
  const { criticalH, phyllochron, growth } = valuesOf(draw);
  return beliefSite(site, {
    ...usualBelief(),
    criticalH: { mean: criticalH, sd: 0 },
    phyllochron: { mean: phyllochron, sd: 0 },
    growth: { mean: growth, sd: 0 },
  });
}

function forecast(site: Site, plan: Plan, fellDay: DayNumber): Forecast | null {
  const { days } = runPlan(site, plan).neckFall;
  if (!days) return null;
  return {
    errorDays: days.p50 - fellDay,
    widthDays: days.p90 - days.p10,
    holds: days.p10 <= fellDay && fellDay <= days.p90,
  };
}
