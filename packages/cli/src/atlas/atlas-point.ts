import { locatePoint, type PlaceAssets } from '@neckfall/answers';
import { siteOptionsAt, usualSite } from '@neckfall/data';
import { publishedPractice } from '@neckfall/data/node';
import {
  type AtlasEntry,
  type AtlasFigures,
  atlasEntries,
  formatDay,
  type GridPoint,
  leadAt,
  leadingEntry,
  openSite,
  parseDay,
} from '@neckfall/engine';
import { round } from '../documents/values.ts';
import type { AtlasSettings } from './settings.ts';

/** What one kind started one way does at a point, as it is written. */
export type AtlasRow = {
  class: AtlasEntry['class'];
  type: AtlasEntry['type'];
  start: AtlasEntry['start'];
  startDate: string;
  goodYearsInTen: number;
  outcome: AtlasEntry['outcome'];
  gamble: boolean;
  neckFall: string | null;
  bulbDiameterMm: number | null;
  isAtHome: boolean;
};

/** A point of a map with what leads there, and where that was asked for with all that was tried. */
export type AtlasPointRow = { latitudeDeg: number; longitudeDeg: number; elevationM: number } & AtlasRow & {
    entries?: AtlasRow[];
  };

/** A point worked out as the other commands would for `--at LAT,LON`; null at sea, beyond the climate, in another country. */
export function atlasPoint(
  point: GridPoint,
  settings: AtlasSettings,
  assets: PlaceAssets,
): AtlasPointRow | null {
  const place = locatePoint({ ...point, elevationM: null }, assets);
  if ('problem' in place) return null;
  if (settings.country !== null && place.near?.town.country !== settings.country) return null;
  const { years, seed, sunHours, from } = settings;
  const warmerC = settings.warmerC ?? usualSite.warmerC;
  const site = openSite(siteOptionsAt(place.climate, publishedPractice, { years, seed, warmerC }));
  const options = { sunHours };
  const at = { ...point, elevationM: place.elevationM };
  if (!settings.isFull) return { ...at, ...rowOf(leadAt(site, from, settings, options)) };
  const entries = atlasEntries(site, from, options);
  return { ...at, ...rowOf(leadingEntry(entries, settings)), entries: entries.map(rowOf) };
}

function rowOf(entry: AtlasEntry): AtlasRow {
  const { goodShare, neckFallDay, bulbDiameterMm } = entry;
  return {
    class: entry.class,
    type: entry.type,
    start: entry.start,
    startDate: formatDay(entry.startDay),
    goodYearsInTen: round(10 * goodShare, 1),
    outcome: entry.outcome,
    gamble: entry.gamble,
    neckFall: neckFallDay === null ? null : formatDay(neckFallDay),
    bulbDiameterMm: bulbDiameterMm === null ? null : round(bulbDiameterMm, 1),
    isAtHome: entry.isAtHome,
  };
}

/** The same as maps are drawn and told. */
export function mapPoint(row: AtlasPointRow): GridPoint & { entry: AtlasFigures } {
  const { latitudeDeg, longitudeDeg, startDate, neckFall, goodYearsInTen } = row;
  const startDay = parseDay(startDate);
  if (startDay === null) throw new RangeError(`start ${startDate}: expected a day of the calendar`);
  return {
    latitudeDeg,
    longitudeDeg,
    entry: {
      class: row.class,
      type: row.type,
      start: row.start,
      isAtHome: row.isAtHome,
      startDay,
      goodShare: goodYearsInTen / 10,
      outcome: row.outcome,
      gamble: row.gamble,
      neckFallDay: neckFall === null ? null : parseDay(neckFall),
      bulbDiameterMm: row.bulbDiameterMm,
    },
  };
}
