import {
  climateDayOf,
  type DayLengthClass,
  dayNumber,
  formatDay,
  type OnionType,
  type PlantValues,
  type SeasonSummary,
  type Site,
  type StartMethod,
  type StartWindow,
  tryStarts,
  typeForClass,
  type WhenAnswer,
  waysOf,
} from '../../packages/engine/src/index.ts';
import type { PracticePlace } from './practice-places.ts';
import { scoreSite } from './sites.ts';

/** What growers take for granted, put to the model. */
export type PracticeTest = {
  name: string;
  source: 'common practice, no source';
  holds: boolean;
  found: string;
  /** Each place or crop where it does not hold, with its figures. */
  misses: string[];
};

export function practiceTest(name: string, found: string, misses: string[]): PracticeTest {
  return { name, source: 'common practice, no source', holds: misses.length === 0, found, misses };
}

export const practiceYear = 2027;

export function practiceDay(month: number, day: number): number {
  return dayNumber(practiceYear, month, day);
}

export function siteOfPractice(
  [, latitudeDeg, longitudeDeg, elevationM]: PracticePlace,
  values: PlantValues,
): Site {
  return scoreSite({ latitudeDeg, longitudeDeg, elevationM }, values);
}

/** What a packet of a class holds here for a start: the one place that asks the engine's rule. */
export function typeMeant(
  site: Site,
  dayLengthClass: DayLengthClass,
  start: StartMethod,
  startDay: number,
): OnionType {
  return typeForClass(site, dayLengthClass, start, startDay);
}

/** The year's week starts of such packets, each with the type that it means on the day. */
export function yearOf(site: Site, dayLengthClass: DayLengthClass, start: StartMethod): WhenAnswer {
  return tryStarts(site, waysOf(site, { class: dayLengthClass }, [start]), {}, practiceDay(1, 1));
}

/** Whether a day of the year lies in one of the windows; one may run across New Year. */
export function isOpenOn(windows: readonly StartWindow[], dayOfYear: number): boolean {
  return windows.some(({ from, to }) =>
    from <= to ? dayOfYear >= from && dayOfYear <= to : dayOfYear >= from || dayOfYear <= to,
  );
}

/** Nobody works a bed before this in the north, however mild. */
const firstSpringDay = practiceDay(3, 1);

/** First day of spring on which the bed is usually so warm. */
export function bedReaches(site: Site, bedC: number): number {
  const { soilMeanC } = site.mean('none');
  let day = firstSpringDay;
  while (soilMeanC[climateDayOf(day)] < bedC && day < firstSpringDay + 180) day++;
  return day;
}

export const percent = (share: number): string => `${Math.round(100 * share)} %`;

/** One start's figures in a line. */
export function sayStart(summary: SeasonSummary): string {
  const { plan, outcome, seasonShares, boltedPlantsShare, bulbDiameterMm, neckFall, leavesMadeAtOnset } =
    summary;
  const failures = Object.entries(seasonShares)
    .filter(([verdict, share]) => verdict !== 'good' && share >= 0.1)
    .map(([verdict, share]) => `${verdict} ${percent(share)}`);
  const parts = [
    `${plan.type} ${formatDay(plan.startDay).slice(5)}`,
    outcome,
    `good ${percent(seasonShares.good)}`,
    ...failures,
    `flower ${percent(boltedPlantsShare?.p50 ?? 0)}`,
    `${(bulbDiameterMm?.p50 ?? 0).toFixed(0)} mm`,
    `${(leavesMadeAtOnset?.p50 ?? 0).toFixed(1)} leaves`,
    neckFall.days ? `tops over ${formatDay(neckFall.days.p50).slice(5)}` : 'tops stand',
  ];
  return parts.join(', ');
}

/** Lowest, middle and highest of some figures. */
export function sayRange(figures: readonly number[], digits = 0): string {
  const sorted = figures.toSorted((a, b) => a - b);
  const at = (share: number) => sorted[Math.round(share * (sorted.length - 1))]?.toFixed(digits) ?? 'none';
  return `${at(0)}–${at(0.5)}–${at(1)}`;
}
