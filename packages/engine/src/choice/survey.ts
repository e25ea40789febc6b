import type { DayNumber } from '../calendar/index.ts';
import {
  classOfType,
  type DayLengthClass,
  dayLengthClasses,
  hoursFromHome,
  startMethods,
} from '../plant/index.ts';
import type { ClassAnswer, SeasonSummary, Site, TodayAnswer } from '../season/index.ts';
import type { GrowingOptions } from './growing-options.ts';
import { once } from './once.ts';
import { type StartNow, surveyWays } from './survey-ways.ts';
import { isAutumnStart } from './type-for-class.ts';
import { type Way, waysOf } from './ways.ts';

/** What a place says of every class: in the year and today. */
export type PlaceAnswer = {
  classes: readonly ClassAnswer[];
  today: readonly TodayAnswer[];
  now: ClassNow | null;
};

/** What to start today. */
export type ClassNow = ClassAnswer & Pick<StartNow, 'until'>;

/** The classes of a place, looked into as far as asked. */
export type ClassSurvey = {
  /** The class that suits the place best, at its best start. */
  lead: () => ClassAnswer;
  /** Each class at its best start, that one first. */
  classes: () => ClassAnswer[];
  /** What each class, started each way, is worth today. */
  today: () => TodayAnswer[];
  /** The best that is in time today: of the leading class where there is any, else of those at home here. */
  now: () => ClassNow | null;
};

/** Looks over all classes and ways of starting for the starts from today on. */
export function surveyOf(site: Site, today: DayNumber, options: GrowingOptions = {}): ClassSurvey {
  const ways = dayLengthClasses.flatMap((dayLengthClass) =>
    waysOf(site, { class: dayLengthClass }, startMethods),
  );
  const survey = surveyWays(site, ways, today, options);
  const isOf = (dayLengthClass: DayLengthClass) => (way: Way) => classOfType[way.type] === dayLengthClass;
  const lead = once(() => classAnswer(site, survey.best().summary));
  const classes = once(() => {
    const rest = dayLengthClasses
      .filter((dayLengthClass) => dayLengthClass !== lead().class)
      .map((dayLengthClass) => survey.best(isOf(dayLengthClass)))
      .sort((a, b) => b.worth - a.worth);
    return [lead(), ...rest.map(({ summary }) => classAnswer(site, summary))];
  });
  const nowOf = (dayLengthClass: DayLengthClass): ClassNow | null => {
    const found = survey.now(isOf(dayLengthClass));
    return found && { ...classAnswer(site, found.summary), until: found.until };
  };
  const now = once(() => {
    const leading = nowOf(lead().class);
    if (leading) return leading;
    const [, ...others] = classes();
    return others.map((other) => nowOf(other.class)).find((found) => found?.isAtHome) ?? null;
  });
  return { lead, classes, today: once(survey.today), now };
}

/** Which class suits a place, how and when it is best started, and what a start is worth today. */
export function surveyPlace(site: Site, today: DayNumber, options: GrowingOptions = {}): PlaceAnswer {
  const survey = surveyOf(site, today, options);
  return { classes: survey.classes(), today: survey.today(), now: survey.now() };
}

function classAnswer(site: Site, summary: SeasonSummary): ClassAnswer {
  const { startDay, type, start } = summary.plan;
  return {
    class: classOfType[type],
    type,
    verdict: summary.outcome,
    gamble: summary.gamble,
    isAtHome: hoursFromHome(type, site.longestDayH, isAutumnStart(startDay, site.climate.latitudeDeg)) === 0,
    bestStart: start,
    summary,
    reason: summary.reason,
  };
}
