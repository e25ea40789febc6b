import { type Gazetteer, partOf, populationAt, townAt } from './gazetteer.ts';
import type { Town } from './town.ts';
import { nearestAccepted } from './town-grid.ts';

/** "Near X" helps when X is much better known: at least twice as large, and a city. Our own choice. */
const LARGER_BY = 2;
const CITY_POPULATION = 50_000;
const NEAR_KM = 300;

/**
 * The town nearest to a point, with its great-circle distance. Latitude −90…90°, longitude any finite number of
 * degrees (180 and −180 are the same meridian). Throws a RangeError otherwise.
 */
export function nearestTown(
  gazetteer: Gazetteer,
  latitudeDeg: number,
  longitudeDeg: number,
): { town: Town; distanceKm: number } {
  if (!(Math.abs(latitudeDeg) <= 90) || !Number.isFinite(longitudeDeg)) {
    throw new RangeError(
      `point ${latitudeDeg}, ${longitudeDeg}: a latitude of −90…90 and a longitude were expected`,
    );
  }
  const nearest = nearestAccepted(gazetteer, latitudeDeg, longitudeDeg, () => true, Number.POSITIVE_INFINITY);
  if (nearest === null) throw new RangeError('the gazetteer has no towns');
  return { town: townAt(gazetteer, nearest.town), distanceKm: nearest.distanceKm };
}

/**
 * The nearest city to name a town by: at least twice its people and at least 50,000, within 300 km. Null where
 * there is none, as for the largest cities and lonely islands.
 */
export function nearbyLarger(gazetteer: Gazetteer, town: Town): Town | null {
  const least = Math.max(LARGER_BY * town.population, CITY_POPULATION);
  const isLarger = (other: number) => {
    const part = partOf(gazetteer, other);
    return populationAt(part, other - part.firstTown) >= least;
  };
  const nearest = nearestAccepted(gazetteer, town.latitudeDeg, town.longitudeDeg, isLarger, NEAR_KM);
  return nearest === null ? null : townAt(gazetteer, nearest.town);
}
