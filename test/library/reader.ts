/** A small program of a reader of the library: it is type-checked as it stands, against the installed packages. */
import { type Place, siteAt } from '@neckfall/data';
import { fetchSiteAssets } from '@neckfall/data/browser';
import { readSiteAssets } from '@neckfall/data/node';
import { type Plan, parseDay, planDefaults, runPlan, type SeasonSummary } from '@neckfall/engine';

const plan: Plan = {
  ...planDefaults,
  type: 'northern-long',
  start: 'sets',
  startDay: parseDay('2027-03-25') as number,
};
export const season: SeasonSummary = runPlan(
  siteAt(readSiteAssets(), { latitudeDeg: 52.1, longitudeDeg: 5.2 }, { years: 5 }),
  plan,
);
export const elevation = (place: Place): number => place.elevationM;
export const assets = () => fetchSiteAssets(new URL('https://example.org/assets/'));
// @ts-expect-error a plan of sets has no nursery
export const warmth: number = season.plan.start === 'sets' ? season.plan.nurseryTempC : 0;
// @ts-expect-error years are a number: types are there, and not any
export const site = siteAt(readSiteAssets(), { latitudeDeg: 0, longitudeDeg: 0 }, { years: 'five' });
