import { type Place, placeAssumptions, placeLabel, sourceNames } from '@neckfall/answers';
import { siteOptionsAt, usualSite } from '@neckfall/data';
import { publishedPractice } from '@neckfall/data/node';
import { openSite, type Site, type SiteOptions } from '@neckfall/engine';
import type { Speaker } from '@neckfall/words';
import type { WeatherFile } from '../files/weather-file.ts';
import type { PlaceOptions } from '../options/place-options.ts';
import { type Assets, ownAssets } from '../place/assets.ts';
import { placeWarnings } from '../place/place-warnings.ts';
import { resolvePlace } from '../place/resolve-place.ts';
import { recordWarnings, weatherAssumptions } from './weather-notes.ts';

/** What every answer stands on. */
export type Frame = {
  place: Place;
  /** The place in words. */
  label: string;
  site: Site;
  options: PlaceOptions;
  warmerC: number;
  speaker: Speaker;
  assumed: string[];
  warnings: string[];
  sources: string[];
};

/** The place asked for with its warming, opened for trying plans. */
export type Ground = Pick<Frame, 'place' | 'warmerC' | 'site'> & {
  /** Its days are those of the place's standard time. */
  weather: WeatherFile | null;
};

export function openGround(options: PlaceOptions, speaker: Speaker, assets: Assets): Ground {
  const place = resolvePlace(options.asked, assets, speaker);
  const warmerC = options.warmerC ?? usualSite.warmerC;
  const weather = options.weather?.at(place) ?? null;
  const site = openSite(siteOptionsOf({ place, warmerC, options: { ...options, weather } }));
  return { place, warmerC, site, weather };
}

/** What the site of a frame was opened with: another thread opens the same. */
export function siteOptionsOf({
  place,
  warmerC,
  options,
}: Pick<Frame, 'place' | 'warmerC' | 'options'>): SiteOptions {
  const { years, seed, weather } = options;
  const asked = { years, seed, warmerC, record: weather?.record ?? null };
  return siteOptionsAt(place.climate, publishedPractice, asked);
}

/** How a command comes by its frame; many rows of one place share its ground. */
export type OpenFrame = (options: PlaceOptions, speaker: Speaker) => Frame;

export function openFrame(
  options: PlaceOptions,
  speaker: Speaker,
  assets = ownAssets,
  ground = openGround(options, speaker, assets),
): Frame {
  const { place, warmerC, site, weather } = ground;
  const { sunHours } = options;
  const warmerFrom = options.warmerC === null ? 'default' : 'given';
  const assumed = placeAssumptions(place, { warmerC, warmerFrom, sunHours }, speaker);
  const label = placeLabel(place, speaker);
  const warnings = placeWarnings(place, options, assets, speaker);
  if (weather) {
    assumed.push(...weatherAssumptions(weather, speaker));
    warnings.push(...recordWarnings(weather, place.latitudeDeg, label, speaker));
  }
  return {
    place,
    label,
    site,
    options: { ...options, weather },
    warmerC,
    speaker,
    assumed,
    warnings,
    sources: sourceNames(speaker),
  };
}
