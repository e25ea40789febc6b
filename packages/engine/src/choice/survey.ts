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
  planDefaults,
  type SeasonSummary,
  type Site,
  type TodayAnswer,
} from '../season/index.ts';
import { type StartScan, scanStarts } from './start-scan.ts';
import { type SurveyOptions, startToday } from './start-today.ts';
import { isAutumnStart, usesOfClass } from './type-for-class.ts';
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
const farBehind = 0.15;

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
    startMethods.flatMap((start) =>
      usesOfClass(site, dayLengthClass, start).map(({ type, isUsual }): Way => {
        const plan = { ...planDefaults, ...options, type, start, startDay: today, plantOutDay: null };
        const scan = scanStarts(site, plan, today, isUsual);
        const best = once(() => {
          const summary = scan.best();
          return { summary, worth: worth(site, summary) };
        });
        return { class: dayLengthClass, scan, best };
      }),
    ),
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
    startMethods.map((start) => classToday(site, dayLengthClass, start, today, options)),
  );
}

/** What a class, started one way, is worth today: of whatever its packets hold for that use. */
export function classToday(
  site: Site,
  dayLengthClass: DayLengthClass,
  start: StartMethod,
  today: number,
  options: SurveyOptions = {},
): TodayAnswer {
  const traits = options.traits ?? null;
  const uses = usesOfClass(site, dayLengthClass, start).map(({ type, isUsual }) => ({
    isUsualNow: isUsual(today),
    answer: startToday(site, { type, traits }, start, today, options, isUsual),
  }));
  return joined(uses);
}

/** One answer for a class of which autumn and spring sow different types: what is usual today, else the next to come. */
function joined(uses: readonly { isUsualNow: boolean; answer: TodayAnswer }[]): TodayAnswer {
  const now = (uses.find(({ isUsualNow }) => isUsualNow) ?? uses[0]).answer;
  if (now.stillGoodUntil !== null) return now;
  const next = uses.flatMap(({ answer }) => (answer.nextFrom === null ? [] : [answer.nextFrom]));
  return { ...now, nextFrom: next.length > 0 ? Math.min(...next) : null };
}

function classAnswer(site: Site, dayLengthClass: DayLengthClass, summary: SeasonSummary): ClassAnswer {
  const { startDay, type, start } = summary.plan;
  return {
    class: dayLengthClass,
    type,
    verdict: summary.outcome,
    gamble: summary.gamble,
    isAtHome: hoursFromHome(type, site.longestDayH, isAutumnStart(startDay, site.climate.latitudeDeg)) === 0,
    bestStart: start,
    bestDayOfYear: startDay - dayNumber(civilDate(startDay).year, 1, 1) + 1,
    summary,
    reason: summary.reason,
  };
}
