import type { DayNumber } from '../calendar/index.ts';
import { classOfType, type DayLengthClass, type OnionType } from '../plant/index.ts';
import { openSite, runPlan, type SeasonSummary, type Site } from '../season/index.ts';
import { frostStatistics, weatherYears } from '../weather/index.ts';
import { type LatitudeClimates, latitudeClimate, mostWarmerC } from './latitude-climates.ts';
import { type BestAtLatitude, bestSown, sownInPlace } from './sown-at-latitude.ts';

/** Weather years behind every answer of the lesson, and the seed that draws them. */
export const latitudeYears = 30;
/** Series of made-up weather of the lesson. */
export const latitudeSeed = 1;

/** A made-up place made ready to sow at. @throws RangeError see {@link latitudeClimate} */
export function openLatitude(climates: LatitudeClimates, latitudeDeg: number, warmerC: number): Site {
  const climate = latitudeClimate(climates, latitudeDeg, warmerC);
  return openSite({ climate, years: latitudeYears, seed: latitudeSeed });
}

/** Mean of the coldest night of each winter, °C: what a hardiness zone is made of. */
export function coldestNightC({ climate, years, seed }: Pick<Site, 'climate' | 'years' | 'seed'>): number {
  return frostStatistics(weatherYears(climate, years + 1, seed), climate.latitudeDeg).meanAnnualMinimumC;
}

/** A latitude so much warmer or colder than usual that its coldest night is the one held. */
export type WinterPlace = {
  latitudeDeg: number;
  warmerC: number;
  longestDayH: number;
  best: BestAtLatitude;
};

/** Two places with one winter: what does best at each, and what the best of the other comes to when sown the same day. */
export type OppositePlace = WinterPlace & { coldestC: number; stranger: SeasonSummary };

/** Two latitudes with one coldest night and opposite onions. */
export type SameWinter = {
  coldestNightC: number;
  /** Latitudes that can have it, from the equator on. */
  places: readonly WinterPlace[];
  /** Where a short-day kind does best, and where a long-day one does. */
  opposite: readonly [OppositePlace, OppositePlace];
};

const stepDeg = 5;
const fromDeg = 20;
const toDeg = 60;
/** Nights tried, °C. */
const nights = [-4, -6, -8, -10, -12, -14, -16] as const;

/**
 * Holds the coldest night of the year steady while the latitude moves, and finds two latitudes with opposite
 * kinds, each of which fails when sown with the other's best, that need the least warming or cooling; null where there are none. Made in steps, since each tries
 * the five kinds through a year at one place.
 *
 * @param side 1 north of the equator, −1 south of it
 */
export function* sameWinter(
  climates: LatitudeClimates,
  side: 1 | -1,
  from: DayNumber,
): Generator<undefined, SameWinter | null> {
  const latitudes: { latitudeDeg: number; usualC: number }[] = [];
  for (let degree = fromDeg; degree <= toDeg; degree += stepDeg) {
    const latitudeDeg = side * degree;
    // warmth moves every night of a place alike
    latitudes.push({ latitudeDeg, usualC: coldestNightC(openLatitude(climates, latitudeDeg, 0)) });
    yield;
  }
  let found: SameWinter | null = null;
  let leastC = Number.POSITIVE_INFINITY;
  for (const night of nights) {
    const places: WinterPlace[] = [];
    for (const { latitudeDeg, usualC } of latitudes) {
      const warmerC = night - usualC;
      if (Math.abs(warmerC) > mostWarmerC) continue;
      const site = openLatitude(climates, latitudeDeg, warmerC);
      places.push({ latitudeDeg, warmerC, longestDayH: site.longestDayH, best: bestSown(site, from) });
      yield;
    }
    for (const [short, long] of pairsOf(places)) {
      const effortC = Math.max(Math.abs(short.warmerC), Math.abs(long.warmerC));
      if (effortC >= leastC) continue;
      const opposite = [withStranger(climates, short, long), withStranger(climates, long, short)] as const;
      if (opposite.some(({ stranger }) => stranger.outcome === 'good')) continue;
      leastC = effortC;
      found = { coldestNightC: night, places, opposite };
      yield;
    }
  }
  return found;
}

/** Each place where a short-day kind comes good best with each where a long-day one does. */
function pairsOf(places: readonly WinterPlace[]): [WinterPlace, WinterPlace][] {
  const of = (wanted: DayLengthClass) =>
    places.filter(({ best }) => best.isGood && classOfType[typeOf(best)] === wanted);
  return of('short').flatMap((short) => of('long').map((long): [WinterPlace, WinterPlace] => [short, long]));
}

function withStranger(climates: LatitudeClimates, own: WinterPlace, other: WinterPlace): OppositePlace {
  const site = openLatitude(climates, own.latitudeDeg, own.warmerC);
  const plan = sownInPlace(typeOf(other.best), own.best.summary.plan.startDay);
  return { ...own, coldestC: coldestNightC(site), stranger: runPlan(site, plan) };
}

const typeOf = ({ summary }: BestAtLatitude): OnionType => summary.plan.type;
