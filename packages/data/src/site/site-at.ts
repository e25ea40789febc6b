import {
  type ClimatePoint,
  coverageKm,
  type DailyRecord,
  landWarmingSinceNormalsC,
  openSite,
  type Site,
  type SiteOptions,
  warmed,
} from '@neckfall/engine';
import { type PublishedPractice, practiceNear } from '../practice/index.ts';
import { locatePoint, type PlaceAssets, type PlaceProblem, type Point } from './locate.ts';

/** The data files a site stands on: `readSiteAssets()` in Node, `fetchSiteAssets()` in a browser. */
export type SiteAssets = PlaceAssets & {
  /** Published calendars of growers. */
  practice: () => readonly PublishedPractice[];
};

/** How a site is opened; what is left out is as the commands have it. */
export type SiteAsked = {
  /** Weather years to draw, 1…200; 30. */
  years?: number;
  /** Whole number; the same seed gives the same answer; 1. */
  seed?: number;
  /** Warming added to the climate, °C; by default that of the land since the years the climate was measured in. */
  warmerC?: number;
  /** Measured days, which take the place of generated ones; none. */
  record?: DailyRecord | null;
};

/** What every command and page opens a site with where nothing else is said. */
export const usualSite = {
  years: 30,
  seed: 1,
  warmerC: landWarmingSinceNormalsC,
  record: null,
} as const satisfies Required<SiteAsked>;

/** What a site is opened with at a climate, for `openSite` here or in another thread: plain values. */
export function siteOptionsAt(
  climate: ClimatePoint,
  published: readonly PublishedPractice[],
  asked: SiteAsked = {},
): SiteOptions {
  const {
    years = usualSite.years,
    seed = usualSite.seed,
    warmerC = usualSite.warmerC,
    record = usualSite.record,
  } = asked;
  return {
    climate: warmed(climate, warmerC),
    years,
    seed,
    practice: practiceNear(published, climate),
    record,
  };
}

/**
 * The site at a point, with the same numbers as `neckfall season --at`: climate and elevation of the point, today's
 * warming, what growers of the district do. It keeps weather years and drivers, a few MB: open one for a place and
 * use it for every plan there.
 *
 * @param point degrees, north and east positive; elevation in m, by default that of the nearest town or climate node
 * @throws RangeError where there is nothing to plan with: beyond 60° S to 72° N, at sea, or too far from any climate
 * node. {@link locatePoint} tells these apart without throwing.
 * @throws Error naming the file when a data file is damaged or missing.
 *
 * @example
 * ```js
 * import { siteAt } from '@neckfall/data';
 * import { readSiteAssets } from '@neckfall/data/node';
 * const site = siteAt(readSiteAssets(), { latitudeDeg: 52.1, longitudeDeg: 5.2 });
 * ```
 */
export function siteAt(
  assets: SiteAssets,
  point: Omit<Point, 'elevationM'> & { elevationM?: number | null },
  asked: SiteAsked = {},
): Site {
  const { latitudeDeg, longitudeDeg, elevationM = null } = point;
  if (!(Math.abs(latitudeDeg) <= 90) || !(Math.abs(longitudeDeg) <= 180)) {
    throw new RangeError(
      `point ${latitudeDeg}, ${longitudeDeg}: a latitude of −90…90 and a longitude of −180…180 were expected`,
    );
  }
  const place = locatePoint({ latitudeDeg, longitudeDeg, elevationM }, assets);
  if ('problem' in place) throw new RangeError(`point ${latitudeDeg}, ${longitudeDeg}: ${reasonOf(place)}`);
  return openSite(siteOptionsAt(place.climate, assets.practice(), asked));
}

function reasonOf(found: PlaceProblem): string {
  switch (found.problem) {
    case 'beyond-latitudes':
      return 'land from 60° S to 72° N was expected';
    case 'at-sea':
      return `at sea, ${Math.round(found.near.distanceKm)} km from ${found.near.town.name}; land was expected`;
    case 'beyond-nodes':
      return `${Math.round(found.nearestNodeKm)} km from the nearest climate node; at most ${coverageKm} km were expected`;
  }
}
