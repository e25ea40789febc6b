import { warmed } from '../climate/index.ts';
import type { Site } from '../season/index.ts';
import type { Trial } from './season-facts.ts';

/** The same place in another climate, with what was learnt of its plants. */
export function inClimate(trial: Trial, offsetC: number): Trial {
  const { site } = trial;
  const reopened = site.reopened({ climate: warmed(site.climate, offsetC), record: null });
  return { ...trial, site: asLearnt(site, reopened) };
}

export function asLearnt(site: Site, reopened: Site): Site {
  const { years, weatherYears, weatherYear, draws, middleDraw } = site;
  return { ...reopened, years, weatherYears, weatherYear, draws, middleDraw, referenceG: site.referenceG };
}
