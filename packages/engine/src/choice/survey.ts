import { civilDate, dayNumber } from '../calendar/index.ts';
import { type DayLengthClass, dayLengthClasses, type StartMethod, startMethods } from '../plant/index.ts';
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
import type { OpenPlan } from './try-starts.ts';
import { typeForClass } from './type-for-class.ts';
import { weekStarts } from './week-starts.ts';
import { worth } from './worth.ts';

export type PlaceAnswer = { classes: ClassAnswer[]; today: TodayAnswer[] };

/** What is common to all plans of a survey. */
export type SurveyOptions = Partial<Omit<OpenPlan, 'type' | 'start'>>;

const weeks = weekStarts.length;

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
      const year = yearAhead(site, dayLengthClass, start, today, options);
      outlook.push(todayOf(year, dayLengthClass, start, today));
      for (const summary of year.summaries) {
        if (summary && (!best || worth(site, summary) > worth(site, best.summary))) best = { start, summary };
      }
    }
    if (best) classes.push(classAnswer(dayLengthClass, best.start, best.summary));
  }
  classes.sort((a, b) => worth(site, b.summary) - worth(site, a.summary));
  return { classes, today: outlook };
}

type YearAhead = {
  /** A week apart, the first today; null where the mean climate already says no. */
  summaries: (SeasonSummary | null)[];
  /** Summary of any day. */
  at: (day: number) => SeasonSummary;
};

function yearAhead(
  site: Site,
  dayLengthClass: DayLengthClass,
  start: StartMethod,
  today: number,
  options: SurveyOptions,
): YearAhead {
  const plan = {
    ...planDefaults,
    ...options,
    type: typeForClass(site, dayLengthClass),
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
  const summaries = promising.map((promise, week) => (promise ? at(today + 7 * week) : null));
  return { summaries, at };
}

/** Weeks worth running on weather years: good in the mean climate, or next to such; else the one with the best bulb. */
function screen(
  site: Site,
  runner: Runner,
  today: number,
  plan: Parameters<typeof referenceBulbG>[1],
): boolean[] {
  const reference = referenceBulbG(site, plan);
  const { dryMatterShare } = site.values.types[plan.type];
  let fallback = 0;
  let fallbackG = -1;
  const good = Array.from({ length: weeks }, (_, week) => {
    runner.moveTo(today + 7 * week, null);
    const outcome = runner.meanSeason();
    if (outcome.bulbDryG > fallbackG) {
      fallbackG = outcome.bulbDryG;
      fallback = week;
    }
    return judge(outcome, dryMatterShare, reference) === 'good';
  });
  if (!good.includes(true)) good[fallback] = true;
  return good.map((here, week) => here || good[(week + 1) % weeks] || good[(week + weeks - 1) % weeks]);
}

function todayOf(
  { summaries, at }: YearAhead,
  dayLengthClass: DayLengthClass,
  start: StartMethod,
  today: number,
): TodayAnswer {
  const isGood = (week: number) => summaries[week]?.outcome === 'good';
  if (isGood(0)) {
    let last = 0;
    while (last + 1 < weeks && isGood(last + 1)) last++;
    return {
      start,
      class: dayLengthClass,
      verdict: 'good',
      stillGoodUntil: lastGoodDay(at, today + 7 * last, last + 1 < weeks),
      nextFrom: null,
    };
  }
  const next = summaries.findIndex((_, week) => isGood(week));
  return {
    start,
    class: dayLengthClass,
    verdict: (summaries[0] ?? at(today)).outcome,
    stillGoodUntil: null,
    nextFrom: next < 0 ? null : today + 7 * next,
  };
}

/** Last good day within the week after a good one, by halving. */
function lastGoodDay(at: (day: number) => SeasonSummary, goodDay: number, closes: boolean): number {
  if (!closes) return goodDay;
  let good = goodDay;
  let bad = goodDay + 7;
  while (bad - good > 1) {
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
