import { civilDate, dayNumber } from '../calendar/index.ts';
import {
  type DayLengthClass,
  dayLengthClasses,
  hoursFromHome,
  type StartMethod,
  startMethods,
} from '../plant/index.ts';
import {
  type ClassAnswer,
  type Plan,
  planDefaults,
  type SeasonSummary,
  type Site,
  type TodayAnswer,
} from '../season/index.ts';
import { type StartScan, scanStarts } from './start-scan.ts';
import { type SurveyOptions, startToday } from './start-today.ts';
import { typeForClass } from './type-for-class.ts';
import { worth } from './worth.ts';

export type PlaceAnswer = { classes: readonly ClassAnswer[]; today: readonly TodayAnswer[] };

/**
 * Which class suits a place, how and when it is best started, and what a start is worth today. The year is counted
 * from today, so that every start tried still lies ahead.
 */
export function surveyPlace(site: Site, today: number, options: SurveyOptions = {}): PlaceAnswer {
  return { classes: surveyClasses(site, today, options), today: surveyToday(site, today, options) };
}

/** Ways of growing that fall so far behind at a first look are not followed up, in good seasons of one. */
const farBehind = 0.08;

/** The classes of a place, looked into as far as asked: each answer is worked out once. */
export type ClassSurvey = {
  /** The class that suits the place best, at its best start. */
  lead: () => ClassAnswer;
  /** Each class at its best start, that one first. */
  classes: () => ClassAnswer[];
};

type Way = { class: DayLengthClass; scan: StartScan; best: () => { summary: SeasonSummary; worth: number } };

/** Looks over all classes and ways of starting for the year from today on. */
export function surveyOf(site: Site, today: number, options: SurveyOptions = {}): ClassSurvey {
  const ways = dayLengthClasses.flatMap((dayLengthClass) =>
    startMethods.map((start): Way => {
      const scan = scanStarts(site, planOf(site, dayLengthClass, start, today, options), today);
      const best = once(() => {
        const summary = scan.best();
        return { summary, worth: worth(site, summary) };
      });
      return { class: dayLengthClass, scan, best };
    }),
  );
  const leader = once(() => bestOf(ways));
  const answerOf = ({ class: dayLengthClass, best }: Way) =>
    classAnswer(site, dayLengthClass, best().summary);
  return {
    lead: () => answerOf(leader()),
    classes() {
      const rest = dayLengthClasses
        .filter((dayLengthClass) => dayLengthClass !== leader().class)
        .map((dayLengthClass) => bestOf(ways.filter((way) => way.class === dayLengthClass)))
        .sort((a, b) => b.best().worth - a.best().worth);
      return [leader(), ...rest].map(answerOf);
    },
  };
}

/** Each class at its best start of the year ahead, the one that suits the place best first. */
export function surveyClasses(site: Site, today: number, options: SurveyOptions = {}): ClassAnswer[] {
  return surveyOf(site, today, options).classes();
}

function bestOf(ways: readonly Way[]): Way {
  const ahead = Math.max(...ways.map(({ scan }) => scan.glance())) - farBehind;
  return ways
    .filter(({ scan }) => scan.glance() >= ahead)
    .reduce((a, b) => (b.best().worth > a.best().worth ? b : a));
}

function once<Value>(work: () => Value): () => Value {
  let known: { value: Value } | null = null;
  return () => {
    known ??= { value: work() };
    return known.value;
  };
}

/** What each class, started each way, is worth today. */
export function surveyToday(site: Site, today: number, options: SurveyOptions = {}): TodayAnswer[] {
  return dayLengthClasses.flatMap((dayLengthClass) =>
    startMethods.map((start) => {
      const onion = { type: typeForClass(site, dayLengthClass), traits: options.traits ?? null };
      return startToday(site, onion, start, today, options);
    }),
  );
}

function planOf(
  site: Site,
  dayLengthClass: DayLengthClass,
  start: StartMethod,
  startDay: number,
  options: SurveyOptions,
): Plan {
  const type = typeForClass(site, dayLengthClass);
  return { ...planDefaults, ...options, type, start, startDay, plantOutDay: null };
}

function classAnswer(site: Site, dayLengthClass: DayLengthClass, summary: SeasonSummary): ClassAnswer {
  const { startDay, type, start } = summary.plan;
  return {
    class: dayLengthClass,
    type,
    verdict: summary.outcome,
    gamble: summary.gamble,
    isAtHome: hoursFromHome(type, site.longestDayH) === 0,
    bestStart: start,
    bestDayOfYear: startDay - dayNumber(civilDate(startDay).year, 1, 1) + 1,
    summary,
    reason: summary.reason,
  };
}
