import { practiceNear } from '../../packages/data/src/index.ts';
import { publishedPractice } from '../../packages/data/src/node.ts';
import { scanStarts } from '../../packages/engine/src/choice/start-scan.ts';
import {
  type ClassAnswer,
  formatDay,
  openSite,
  planDefaults,
  type SeasonSummary,
  type Site,
  surveyOf,
  usesOfClass,
  worth,
} from '../../packages/engine/src/index.ts';
import type { PracticePlace } from '../../tools/score/practice-places.ts';
import { climateOf } from '../season/places.ts';

/** From the edge of growing in the north to that in the south; wet and dry, low and high. */
export const steadyPlaces: readonly PracticePlace[] = [
  ['Tromsø', 69.65, 18.96, 10],
  ['Reykjavík', 64.15, -21.94, 20],
  ['Helsinki', 60.17, 24.94, 20],
  ['Oslo', 59.91, 10.75, 20],
  ['Aberdeen', 57.15, -2.09, 30],
  ['Dublin', 53.35, -6.26, 20],
  ['Warsaw', 52.23, 21.01, 110],
  ['London', 51.51, -0.13, 20],
  ['Munich', 48.14, 11.58, 520],
  ['Seattle', 47.61, -122.33, 40],
  ['Fargo', 46.88, -96.79, 275],
  ['Lyon', 45.76, 4.84, 170],
  ['Sapporo', 43.06, 141.35, 20],
  ['Boston', 42.36, -71.06, 10],
  ['Madrid', 40.42, -3.7, 660],
  ['Athens', 37.98, 23.73, 70],
  ['Seville', 37.39, -5.99, 10],
  ['Albuquerque', 35.08, -106.65, 1510],
  ['Saga', 33.26, 130.3, 10],
  ['Vidalia', 32.22, -82.41, 60],
  ['Marrakesh', 31.63, -8.01, 460],
  ['Cairo', 30.04, 31.24, 20],
  ['Laredo', 27.51, -99.51, 130],
  ['Homestead', 25.47, -80.48, 1],
  ['Dhaka', 23.81, 90.41, 10],
  ['Nashik', 20, 73.79, 580],
  ['Chiang Mai', 18.79, 98.98, 310],
  ['Niamey', 13.51, 2.11, 210],
  ['Bengaluru', 12.97, 77.59, 920],
  ['Kano', 12, 8.52, 480],
  ['Bogotá', 4.71, -74.07, 2550],
  ['Singapore', 1.35, 103.82, 20],
  ['Nairobi', -1.29, 36.82, 1700],
  ['Ica', -14.07, -75.73, 410],
  ['Santiago', -33.45, -70.67, 560],
  ['Cape Town', -33.92, 18.42, 20],
  ['Adelaide', -34.93, 138.6, 50],
  ['Pukekohe', -37.2, 174.9, 80],
  ['Hobart', -42.88, 147.33, 30],
  ['Invercargill', -46.41, 168.35, 10],
];

/** What a grower who asks on a day is told to grow, and the ground it was worked out on. */
export type Advice = { site: Site; today: number; lead: ClassAnswer };

/** A place as the app opens it: in today's warmth. */
export function siteAt([, latitudeDeg, longitudeDeg, elevationM]: PracticePlace, seed = 1): Site {
  const climate = climateOf(latitudeDeg, longitudeDeg, elevationM);
  return openSite({ climate, years: 30, seed, practice: practiceNear(publishedPractice, climate) });
}

export function adviceOn(site: Site, today: number): Advice {
  return { site, today, lead: surveyOf(site, today).lead() };
}

const kmPerDeg = 111.2;

/** The point so far to the north-east, as high up: what a hill changes is no whim of the advice. */
export function movedNorthEast(
  [name, latitudeDeg, longitudeDeg, elevationM]: PracticePlace,
  km: number,
): PracticePlace {
  const sideDeg = km / Math.SQRT2 / kmPerDeg;
  return [
    name,
    latitudeDeg + sideDeg,
    longitudeDeg + sideDeg / Math.cos((latitudeDeg * Math.PI) / 180),
    elevationM,
  ];
}

/** How two advices compare; worths in good seasons of one, at the first one's place and day. */
export type Comparison = {
  isSame: boolean;
  /** Whether the years tried at the first cannot tell the two ways apart. */
  isTie: boolean;
  /** By how much the second's way is worth less there. */
  gap: number;
  /** How much of that may be chance. */
  allowed: number;
};

export function compare(first: Advice, second: Advice): Comparison {
  const isSame =
    first.lead.class === second.lead.class &&
    first.lead.bestStart === second.lead.bestStart &&
    useOf(first) === useOf(second);
  if (isSame) return { isSame, isTie: true, gap: 0, allowed: 0 };
  const { site, lead } = first;
  const other = seasonOf(second, first);
  const gap = worth(site, lead.summary) - worth(site, other);
  const allowed = Math.hypot(samplingError(lead.summary), samplingError(other));
  // a way worth much more that was not named is as bad as one worth much less that is
  return { isSame, isTie: Math.abs(gap) <= allowed, gap, allowed };
}

/** Both ways round: who asked first must not matter. */
export function isSteady(first: Advice, second: Advice): boolean {
  return compare(first, second).isTie && compare(second, first).isTie;
}

/** Which of the uses of its class a lead is: planting in autumn and in spring are two ways, whatever their types here. */
function useOf({ site, lead }: Advice): number {
  return usesOfClass(site, lead.class, lead.bestStart).findIndex(({ type }) => type === lead.type);
}

/** The season of another's way at its best start here and from this day on, searched as the survey does. */
function seasonOf(other: Advice, { site, today }: Advice): SeasonSummary {
  const { class: dayLengthClass, bestStart: start } = other.lead;
  const uses = usesOfClass(site, dayLengthClass, start);
  const { type, isUsual } = uses[useOf(other)] ?? uses[0];
  return scanStarts(site, { ...planDefaults, type, start, startDay: today }, today, isUsual).best().summary;
}

/** Standard error of a share of good seasons, said again here so that the ranking is not checked by its own figure. */
function samplingError({ years, seasonShares }: SeasonSummary): number {
  const share = (seasonShares.good * years + 0.5) / (years + 1);
  return Math.sqrt((share * (1 - share)) / years);
}

/** An advice in a few words. */
export function sayLead({ class: dayLengthClass, bestStart, summary }: ClassAnswer): string {
  const { plan, seasonShares } = summary;
  return `${dayLengthClass} ${bestStart} ${formatDay(plan.startDay)}, good ${Math.round(100 * seasonShares.good)} %`;
}
