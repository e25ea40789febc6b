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
import { scanStarts } from './start-scan.ts';
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

/** Ways of starting that fall so far behind at a first look are not followed up, in good seasons of one. */
const farBehind = 0.15;

/** Each class at its best start of the year ahead, the one that suits the place best first. */
export function surveyClasses(site: Site, today: number, options: SurveyOptions = {}): ClassAnswer[] {
  const answers = dayLengthClasses.map((dayLengthClass) => {
    const scans = startMethods.map((start) =>
      scanStarts(site, planOf(site, dayLengthClass, start, today, options), today),
    );
    const ahead = Math.max(...scans.map((scan) => scan.glance())) - farBehind;
    const tried = scans
      .filter((scan) => scan.glance() >= ahead)
      .map((scan) => {
        const summary = scan.best();
        return { summary, worth: worth(site, summary) };
      });
    const best = tried.reduce((a, b) => (b.worth > a.worth ? b : a));
    return { worth: best.worth, answer: classAnswer(site, dayLengthClass, best.summary) };
  });
  return answers.sort((a, b) => b.worth - a.worth).map(({ answer }) => answer);
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
