import { civilDate, dayNumber } from '../calendar/index.ts';
import {
  classOfType,
  type DayLengthClass,
  dayLengthClasses,
  type StartMethod,
  startMethods,
} from '../plant/index.ts';
import {
  type ClassAnswer,
  judge,
  planDefaults,
  type Runner,
  referenceBulbG,
  runnerOf,
  type SeasonSummary,
  type Site,
  summarise,
  type TodayAnswer,
} from '../season/index.ts';
import { bestStretch, middleAhead } from './best-stretch.ts';
import type { OpenPlan } from './try-starts.ts';
import { typeForClass } from './type-for-class.ts';
import { worth } from './worth.ts';

export type PlaceAnswer = { classes: ClassAnswer[]; today: TodayAnswer[] };

/** What is common to all plans of a survey. */
export type SurveyOptions = Partial<Omit<OpenPlan, 'type' | 'start'>>;

/** Starts are surveyed a fortnight apart; the edges of a window are then found to the day. */
const stepDays = 14;
const steps = 26;

/**
 * Which class suits a place, how and when it is best started, and what a start is worth today.
 * Weeks are screened on the mean climate; weather years are run where a good crop is in sight.
 * Weeks count from today, so that every start tried still lies ahead.
 */
export function surveyPlace(site: Site, today: number, options: SurveyOptions = {}): PlaceAnswer {
  const classes: ClassAnswer[] = [];
  const outlook: TodayAnswer[] = [];
  for (const dayLengthClass of dayLengthClasses) {
    let best: { start: StartMethod; summary: SeasonSummary } | null = null;
    for (const start of startMethods) {
      const onion = { type: typeForClass(site, dayLengthClass), traits: options.traits ?? null };
      const year = yearAhead(site, onion, start, today, options);
      outlook.push(todayOf(year, dayLengthClass, start, today));
      const summary = bestOf(site, year, today);
      if (!best || worth(site, summary) > worth(site, best.summary)) best = { start, summary };
    }
    if (best) classes.push(classAnswer(dayLengthClass, best.start, best.summary));
  }
  classes.sort((a, b) => worth(site, b.summary) - worth(site, a.summary));
  return { classes, today: outlook };
}

/** What one way of starting one onion is still worth today. */
export function startToday(
  site: Site,
  onion: Pick<OpenPlan, 'type' | 'traits'>,
  start: StartMethod,
  today: number,
  options: SurveyOptions = {},
): TodayAnswer {
  const year = yearAhead(site, onion, start, today, options);
  return todayOf(year, classOfType[onion.type], start, today);
}

type YearAhead = {
  /** A step apart, the first today; null where the mean climate already says no. */
  summaries: (SeasonSummary | null)[];
  /** Summary of any day. */
  at: (day: number) => SeasonSummary;
};

function yearAhead(
  site: Site,
  onion: Pick<OpenPlan, 'type' | 'traits'>,
  start: StartMethod,
  today: number,
  options: SurveyOptions,
): YearAhead {
  const plan = {
    ...planDefaults,
    ...options,
    ...onion,
    start,
    startDay: today,
    plantOutDay: null,
  };
  const runner = runnerOf(site, plan);
  const at = (day: number) => {
    runner.moveTo(day, null);
    return summarise(site, { ...plan, startDay: day }, runner);
  };
  const promising = screen(site, runner, today, plan);
  const summaries = promising.map((promise, step) => (promise ? at(today + stepDays * step) : null));
  return { summaries, at };
}

/** The best start of the year ahead, or a middling one of those as good as it. */
function bestOf(site: Site, { summaries, at }: YearAhead, today: number): SeasonSummary {
  const worths = summaries.map((summary) => (summary ? worth(site, summary) : Number.NEGATIVE_INFINITY));
  const best = worths.indexOf(Math.max(...worths));
  const middle = middleAhead(
    bestStretch(best, steps, (step) => worths[step]),
    steps,
  );
  return summaries[middle] ?? at(today + stepDays * middle);
}

/** Weeks worth running on weather years: good in the mean climate, or next to such; else the one with the best bulb. */
function screen(
  site: Site,
  runner: Runner,
  today: number,
  plan: Parameters<typeof referenceBulbG>[1],
): boolean[] {
  const reference = referenceBulbG(site, plan);
  const { dryMatterShare } = runner.crop.type;
  let fallback = 0;
  let fallbackG = -1;
  const good = Array.from({ length: steps }, (_, step) => {
    runner.moveTo(today + stepDays * step, null);
    const outcome = runner.meanSeason();
    if (outcome.bulbDryG > fallbackG) {
      fallbackG = outcome.bulbDryG;
      fallback = step;
    }
    return judge(outcome, dryMatterShare, reference) === 'good';
  });
  if (!good.includes(true)) good[fallback] = true;
  return good.map((here, step) => here || good[(step + 1) % steps] || good[(step + steps - 1) % steps]);
}

function todayOf(
  { summaries, at }: YearAhead,
  dayLengthClass: DayLengthClass,
  start: StartMethod,
  today: number,
): TodayAnswer {
  const isGood = (step: number) => summaries[step]?.outcome === 'good';
  if (isGood(0)) {
    let last = 0;
    while (last + 1 < steps && isGood(last + 1)) last++;
    return {
      start,
      class: dayLengthClass,
      verdict: 'good',
      stillGoodUntil:
        last + 1 < steps
          ? edgeOfGood(at, today + stepDays * last, today + stepDays * (last + 1))
          : today + stepDays * last,
      nextFrom: null,
    };
  }
  const next = summaries.findIndex((_, step) => isGood(step));
  return {
    start,
    class: dayLengthClass,
    verdict: (summaries[0] ?? at(today)).outcome,
    stillGoodUntil: null,
    nextFrom: next < 0 ? null : edgeOfGood(at, today + stepDays * next, today + stepDays * (next - 1)),
  };
}

/** The good day nearest to a bad one, by halving between them; works in both directions. */
function edgeOfGood(at: (day: number) => SeasonSummary, goodDay: number, badDay: number): number {
  let good = goodDay;
  let bad = badDay;
  while (Math.abs(bad - good) > 1) {
    const middle = (good + bad) >> 1;
    if (at(middle).outcome === 'good') good = middle;
    else bad = middle;
  }
  return good;
}

function classAnswer(
  dayLengthClass: DayLengthClass,
  start: StartMethod,
  summary: SeasonSummary,
): ClassAnswer {
  const { startDay, type } = summary.plan;
  return {
    class: dayLengthClass,
    type,
    verdict: summary.outcome,
    gamble: summary.gamble,
    bestStart: start,
    bestDayOfYear: startDay - dayNumber(civilDate(startDay).year, 1, 1) + 1,
    summary,
    reason: summary.reason,
  };
}
