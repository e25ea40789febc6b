import {
  type DailyRecord,
  type DayNumber,
  inFrostHollow,
  type LocalPractice,
  type MonthlyClimate,
  openSite,
  type Site,
  type StartMethod,
  warmed,
} from '@neckfall/engine';
import type { EarlierSeason } from './belief-after.ts';
import { lastFew } from './last-few.ts';

/** The ground that plans are tried on, in a form that can be copied between threads. */
export type SiteAsked = {
  /** Without any warming offset. */
  climate: MonthlyClimate;
  warmerC: number;
  frostHollow: boolean;
  years: number;
  seed: number;
  /** What growers of the district do, as published. */
  practice: readonly LocalPractice[];
  /** Ways of starting for which the grower has what it takes in the hand. */
  atHand: readonly StartMethod[];
  /** Seasons of the onion here that this one starts from, the oldest first; see grown-site. */
  earlier?: readonly EarlierSeason[];
  /** The weather that came, for crops that were started; null: none is kept. */
  weather?: WeatherMet | null;
};

/** Weather kept of a place. */
export type WeatherMet = {
  /** Tells it from any other. */
  key: string;
  record: DailyRecord;
  /** Crops started later have met none of it. */
  lastStart: DayNumber;
};

/** Sites hold weather years and drivers, a few MB each. */
const sites = lastFew<Site>(6);

/** The site asked for, made ready once and kept while it is among the last used. */
export function siteOf(asked: SiteAsked): Site {
  const { climate, warmerC, frostHollow, years, seed, practice, atHand, weather = null } = asked;
  const { latitudeDeg, longitudeDeg, elevationM } = climate;
  const place = [latitudeDeg, longitudeDeg, elevationM, warmerC, frostHollow, years, seed];
  const key = [...place, weather?.key].join(' ');
  const site = sites(key, () =>
    openSite({
      climate: warmed(frostHollow ? inFrostHollow(climate) : climate, warmerC),
      years,
      seed,
      practice,
      record: weather?.record ?? null,
    }),
  );
  return atHand.length > 0 ? { ...site, atHand } : site;
}
