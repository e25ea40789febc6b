import { geoDistance } from 'd3-geo';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { nearbyLarger, nearestTown, resolveTown, type Town, townAt } from '../../src/places/index.ts';
import { loadGazetteer } from '../../src/places/node.ts';

const gazetteer = loadGazetteer();
const towns = Array.from({ length: gazetteer.townCount }, (_, town) => townAt(gazetteer, town));
const MEAN_EARTH_RADIUS_KM = 6371.0088;

function distanceKm(town: Town, latitudeDeg: number, longitudeDeg: number): number {
  return (
    geoDistance([town.longitudeDeg, town.latitudeDeg], [longitudeDeg, latitudeDeg]) * MEAN_EARTH_RADIUS_KM
  );
}

function called(text: string): Town {
  const answer = resolveTown(gazetteer, text);
  if (answer.kind === 'unknown') throw new Error(text);
  return answer.town;
}

describe('the nearest town', () => {
  const awkward = [
    [90, 0],
    [-90, 12],
    [89.9, -179.9],
    [71, 180],
    [-16.8, -180],
    [-16.8, 539.99],
    [0, -140],
    [-48.9, -123.4],
  ];
  const anywhere = fc.tuple(
    fc.double({ min: -90, max: 90, noNaN: true }),
    fc.double({ min: -180, max: 180, noNaN: true }),
  );

  test('is the one that measuring to every town finds', () => {
    fc.assert(
      fc.property(anywhere, ([latitudeDeg, longitudeDeg]) => {
        const least = towns.reduce(
          (best, town) => Math.min(best, distanceKm(town, latitudeDeg, longitudeDeg)),
          Number.POSITIVE_INFINITY,
        );
        const nearest = nearestTown(gazetteer, latitudeDeg, longitudeDeg);
        expect(nearest.distanceKm).toBeCloseTo(least, 6);
        expect(distanceKm(nearest.town, latitudeDeg, longitudeDeg)).toBeCloseTo(least, 6);
      }),
      { seed: 4, numRuns: 25, examples: awkward.map((point) => [point as [number, number]]) },
    );
  });

  test.each([
    [91, 0],
    [Number.NaN, 0],
    [0, Number.POSITIVE_INFINITY],
  ])('of %s, %s is refused', (latitudeDeg, longitudeDeg) => {
    expect(() => nearestTown(gazetteer, latitudeDeg, longitudeDeg)).toThrow(
      `point ${latitudeDeg}, ${longitudeDeg}`,
    );
  });
});

describe('the larger town to name a place by', () => {
  test('is the nearest city of twice its people', () => {
    const town = called('Springfield, OH');
    const larger = nearbyLarger(gazetteer, town) as Town;
    const nearer = towns.filter(
      (other) =>
        other.population >= 2 * town.population &&
        distanceKm(other, town.latitudeDeg, town.longitudeDeg) <
          distanceKm(larger, town.latitudeDeg, town.longitudeDeg),
    );
    expect(larger.name).toBe('Dayton');
    expect(nearer).toEqual([]);
  });

  test('does not exist for the largest city or far from any', () => {
    expect(nearbyLarger(gazetteer, called('Shanghai'))).toBeNull();
    expect(nearbyLarger(gazetteer, called('Hanga Roa'))).toBeNull();
  });
});
