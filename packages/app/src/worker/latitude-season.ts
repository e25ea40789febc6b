import { type LatitudeTold, placeYear } from '@neckfall/answers';
import {
  bestOfSown,
  coldestNightC,
  kindsSown,
  type LatitudeClimates,
  medianSeasonDays,
  type OnionType,
  onionTypes,
  openLatitude,
  runPlan,
  type Site,
  sowingYear,
  sownInPlace,
  sunOverYear,
} from '@neckfall/engine';
import { lastFew } from './last-few.ts';

export type LatitudeAsked = {
  climates: LatitudeClimates;
  latitudeDeg: number;
  warmerC: number;
  startDay: number;
  type: OnionType;
};

export type LatitudeReply = LatitudeTold & {
  warmerC: number;
  /** Mean of the year, and of the coldest night of each winter, °C. */
  meanC: number;
  coldestC: number;
};

type Place = { site: Site; coldestC: number };
const places = lastFew<Place>(6);

/** From 1 August to the end of the year after: a tropical crop sown last is done by then; south, half a year on. */
const shownDays = 517;
const earlierDays = 21;

/** All kinds sown at a latitude, the one chosen day by day and three weeks earlier too. */
export function latitudeSeason({
  climates,
  latitudeDeg,
  warmerC,
  startDay,
  type,
}: LatitudeAsked): LatitudeReply {
  const { site, coldestC } = places(`${latitudeDeg} ${warmerC}`, () => {
    const site = openLatitude(climates, latitudeDeg, warmerC);
    return { site, coldestC: coldestNightC(site) };
  });
  const kinds = kindsSown(site, startDay);
  const chosen = onionTypes.indexOf(type);
  const { tempMeanC } = site.climate;
  return {
    latitudeDeg,
    warmerC,
    startDay,
    sun: sunOverYear(site, startDay),
    year: placeYear(site.climate, sowingYear(startDay, latitudeDeg), shownDays),
    kinds,
    chosen,
    best: kinds.indexOf(bestOfSown(site, kinds)),
    days: medianSeasonDays(site, kinds[chosen].summary.plan),
    earlier: runPlan(site, sownInPlace(type, startDay - earlierDays)),
    meanC: tempMeanC.reduce((sum, month) => sum + month, 0) / tempMeanC.length,
    coldestC,
  };
}
