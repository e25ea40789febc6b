import type { DayNumber } from '../calendar/index.ts';
import { daysSinceLongest } from '../calendar/index.ts';
import {
  type CropAsked,
  dayInYear,
  isAutumnStart,
  surveyWays,
  type Way,
  waysOf,
  weekStarts,
  worth,
} from '../choice/index.ts';
import {
  classOfType,
  type DayLengthClass,
  dayLengthClasses,
  hoursFromHome,
  type StartMethod,
  startWays,
} from '../plant/index.ts';
import { type Plan, planDefaults, runPlan, type Site, startedOn } from '../season/index.ts';
import type { Symptom } from './symptoms.ts';

/** A crop that came to something, as far as it was said; null: not said. */
export type CropSaid = {
  crop: CropAsked | null;
  /** Ways in which the onion is sold. */
  sold: readonly StartMethod[];
  start: StartMethod | null;
  startDay: DayNumber | null;
  /** What was seen of it. */
  symptoms: readonly Symptom[];
};

/** What most growers of a place would have had in the ground, given what was said of it. */
export type UsualStart = {
  /** Of the onion taken; null where one was said. */
  class: DayLengthClass | null;
  start: StartMethod;
  /** The day that was said, else the best of a year on or after `today`. */
  startDay: DayNumber;
};

/**
 * What was said of a crop, and what is usual in all else. A class that suits the place is started when that does best; one
 * from elsewhere as the onions of the place are, since nobody knew better. How it was tended has no part in it.
 */
export function usualStart(
  site: Site,
  { crop, sold, start, startDay, symptoms }: CropSaid,
  today: DayNumber,
): UsualStart {
  if (crop !== null && start !== null && startDay !== null) return { class: null, start, startDay };
  const starts = start === null ? likeliestOf(sold, symptoms) : [start];
  const wintered = symptoms.includes('died-in-winter');
  const best = (of: readonly CropAsked[], isWinter: boolean) => {
    const ways = of.flatMap((one) => waysOf(site, one, starts));
    return surveyWays(site, isWinter ? winterWays(site, ways) : ways, today).best().summary.plan;
  };
  const ofPlace = (isWinter: boolean) =>
    best(
      dayLengthClasses.map((one) => ({ class: one })),
      isWinter,
    );
  const taken = crop === null ? classOfType[ofPlace(false).type] : null;
  const onion: CropAsked = crop ?? { class: taken ?? 'long' };
  if (startDay !== null)
    return {
      class: taken,
      start: start ?? bestOn(site, waysOf(site, onion, starts), startDay).start,
      startDay,
    };
  const own = best([onion], wintered);
  const plan = isAtHome(site, own) ? own : ofPlace(wintered);
  return { class: taken, start: plan.start, startDay: plan.startDay };
}

/** What is seen of seedlings alone. */
const ofSeedlings: readonly Symptom[] = ['few-came-up', 'seedlings-toppled'];

/** Seed, where seedlings were seen and it may be had. */
function likeliestOf(sold: readonly StartMethod[], symptoms: readonly Symptom[]): readonly StartMethod[] {
  const fromSeed = sold.filter((start) => startWays[start].from === 'seed');
  return symptoms.some((symptom) => ofSeedlings.includes(symptom)) && fromSeed.length > 0 ? fromSeed : sold;
}

function isAtHome(site: Site, { type, startDay }: Plan): boolean {
  return hoursFromHome(type, site.longestDayH, isAutumnStart(startDay, site.climate.latitudeDeg)) === 0;
}

function bestOn(site: Site, ways: readonly Way[], day: DayNumber): Plan {
  const usual = ways.filter(({ isUsual }) => isUsual(day));
  const tried = usual.map(({ isUsual, ...onion }) => {
    const plan = startedOn({ ...planDefaults, ...onion }, day);
    return { plan, worth: worth(site, runPlan(site, plan)) };
  });
  return tried.reduce((a, b) => (b.worth > a.worth ? b : a)).plan;
}

/** A crop that winters is started no sooner after the longest day, days (common practice, no source). */
const winteringFrom = 45;

/** Ways with a start that is to stand the winter, on such days alone; trays stand indoors where there is another way. */
function winterWays(site: Site, ways: readonly Way[]): readonly Way[] {
  const { latitudeDeg } = site.climate;
  const autumnal = ways.map((way) => ({
    ...way,
    isUsual: (day: DayNumber) =>
      way.isUsual(day) &&
      isAutumnStart(day, latitudeDeg) &&
      daysSinceLongest(day, latitudeDeg) >= winteringFrom,
  }));
  const wintering = autumnal.filter(({ isUsual }) => someDays.some(isUsual));
  const outdoors = wintering.filter(({ start }) => !startWays[start].standsInTrays);
  return outdoors.length > 0 ? outdoors : wintering;
}

const someDays = weekStarts.map((dayOfYear) => dayInYear(2027, dayOfYear));
