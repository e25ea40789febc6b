import type { DayNumber } from '../calendar/index.ts';
import {
  type CropAsked,
  dayInYear,
  type GrowingOptions,
  isAutumnStart,
  surveyWays,
  type Way,
  waysOf,
  weekStarts,
  worth,
} from '../choice/index.ts';
import { classOfType, type DayLengthClass, dayLengthClasses, type StartMethod } from '../plant/index.ts';
import { planDefaults, runPlan, type Site, startedOn } from '../season/index.ts';

/** A crop that came to something, as far as it was said; null: not said. */
export type CropSaid = {
  crop: CropAsked | null;
  /** Ways in which the onion can be started. */
  starts: readonly StartMethod[];
  start: StartMethod | null;
  startDay: DayNumber | null;
  /** It stood a winter. */
  wintered: boolean;
};

/** What most growers of a place would have had in the ground, given what was said of it. */
export type UsualStart = {
  /** Of the onion taken; null where all was said. */
  class: DayLengthClass | null;
  start: StartMethod;
  /** The day that was said, else the best of a year on or after `today`. */
  startDay: DayNumber;
};

/** What was said of a crop, and what is usual in all else: what does best at the place of its ways, on that day or on any. */
export function usualStart(
  site: Site,
  { crop, starts, start, startDay, wintered }: CropSaid,
  today: DayNumber,
  options: GrowingOptions,
): UsualStart {
  if (crop !== null && start !== null && startDay !== null) return { class: null, start, startDay };
  const crops = crop === null ? dayLengthClasses.map((of) => ({ class: of })) : [crop];
  const ways = crops.flatMap((of) => waysOf(site, of, start === null ? starts : [start]));
  const plan =
    startDay === null
      ? surveyWays(site, wintered ? winterWays(site, ways) : ways, today, options).best().summary.plan
      : bestOn(site, ways, startDay, options);
  const { type, start: way, startDay: day } = plan;
  return { class: classOfType[type], start: way, startDay: day };
}

function bestOn(site: Site, ways: readonly Way[], day: DayNumber, options: GrowingOptions) {
  const tried = ways
    .filter(({ isUsual }) => isUsual(day))
    .map(({ isUsual, ...onion }) => {
      const plan = startedOn({ ...planDefaults, ...options, ...onion }, day);
      return { plan, worth: worth(site, runPlan(site, plan)) };
    });
  return tried.reduce((a, b) => (b.worth > a.worth ? b : a)).plan;
}

/** Ways with a start that is to stand the winter, on such days alone; all where there is none. */
function winterWays(site: Site, ways: readonly Way[]): readonly Way[] {
  const autumnal = ways.map((way) => ({
    ...way,
    isUsual: (day: DayNumber) => way.isUsual(day) && isAutumnStart(day, site.climate.latitudeDeg),
  }));
  return autumnal.filter(({ isUsual }) => someDays.some(isUsual));
}

const someDays = weekStarts.map((dayOfYear) => dayInYear(2027, dayOfYear));
