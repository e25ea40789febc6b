import type { DayNumber } from '../calendar/index.ts';
import {
  classOfType,
  type DayLengthClass,
  dayLengthClasses,
  type StartMethod,
  startMethods,
  startWays,
} from '../plant/index.ts';
import { longestNurseryDays, type Plan, type Site } from '../season/index.ts';
import type { CropAsked } from './asked-crop.ts';
import type { GrowingOptions } from './growing-options.ts';
import type { ClassSurvey } from './survey.ts';
import { surveyWays } from './survey-ways.ts';
import { waysOf } from './ways.ts';

/** A plan as far as it was said. */
export type PlanAsked = {
  /** Null: whichever suits the place best. */
  crop: CropAsked | null;
  /** Ways in which the onion can be started. */
  starts: readonly StartMethod[];
  /** Null: the best. */
  start: StartMethod | null;
  startDay: DayNumber | null;
};

/** Onion, start and day that were said or chosen. */
export type PlanChosen = { crop: CropAsked; start: StartMethod; startDay: DayNumber };

/**
 * The onion, its start and its day, chosen where nothing was said: what is in time today before what is best in another
 * year.
 *
 * @param classes the survey of the place, for the onion that suits it best
 */
export function choosePlan(
  site: Site,
  { crop, starts, start, startDay }: PlanAsked,
  today: DayNumber,
  options: GrowingOptions,
  classes: () => ClassSurvey,
): PlanChosen {
  if (crop !== null && start !== null && startDay !== null) return { crop, start, startDay };
  if (
    crop === null &&
    start === null &&
    startDay === null &&
    startMethods.every((way) => starts.includes(way))
  ) {
    const survey = classes();
    const best = survey.now() ?? survey.lead();
    return { crop: { class: best.class }, start: best.bestStart, startDay: best.summary.plan.startDay };
  }
  const onion = crop ?? { class: likeliestClass(site, start === null ? starts : [start], today, options) };
  const ways = waysOf(site, onion, start === null ? starts : [start]);
  const survey = surveyWays(site, ways, today, options);
  const { plan } = (survey.now() ?? survey.best()).summary;
  return { crop: onion, start: plan.start, startDay: startDay ?? plan.startDay };
}

/** The class that an onion of which nothing is said most likely is, started in one of these ways: what suits the place best. */
export function likeliestClass(
  site: Site,
  starts: readonly StartMethod[],
  today: DayNumber,
  options: GrowingOptions,
): DayLengthClass {
  const ways = dayLengthClasses.flatMap((dayLengthClass) => waysOf(site, { class: dayLengthClass }, starts));
  const survey = surveyWays(site, ways, today, options);
  return classOfType[(survey.now() ?? survey.best()).summary.plan.type];
}

/** A day asked for planting out goes with raised seedlings, and comes after the sowing; null: as the plants are ready. */
export function plantOutFor(
  asked: DayNumber | null,
  { start, startDay }: Pick<Plan, 'start' | 'startDay'>,
): DayNumber | null {
  return startWays[start].standsInTrays &&
    asked !== null &&
    asked > startDay &&
    asked <= startDay + longestNurseryDays
    ? asked
    : null;
}
