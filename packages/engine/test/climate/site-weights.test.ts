import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { lookupSettings, nearestSites, positionAt, sitesAt, siteWeights } from '../../src/climate/index.ts';

const place = fc.record({
  latitude: fc.double({ min: -90, max: 90, noNaN: true }),
  longitude: fc.double({ min: -180, max: 180, noNaN: true }),
  elevation: fc.double({ min: -100, max: 5000, noNaN: true }),
});
const sitesOf = (places: { latitude: number; longitude: number; elevation: number }[]) =>
  sitesAt(
    places.map((p) => p.latitude),
    places.map((p) => p.longitude),
    places.map((p) => p.elevation),
  );

describe('site weights', () => {
  it('sum to 1, so that a field that is the same everywhere stays the same', () => {
    fc.assert(
      fc.property(fc.array(place, { minLength: 1, maxLength: 40 }), place, (places, at) => {
        const position = positionAt(at.latitude, at.longitude, at.elevation);
        const { site, weight } = siteWeights(sitesOf(places), position, lookupSettings);
        expect(site.length).toBe(Math.min(places.length, lookupSettings.neighbours));
        expect(weight.reduce((sum, w) => sum + w, 0)).toBeCloseTo(1, 9);
      }),
      { seed: 20270101 },
    );
  });

  it('take the same sites as a plain sort by distance', () => {
    fc.assert(
      fc.property(fc.array(place, { minLength: 1, maxLength: 60 }), place, (places, at) => {
        const sites = sitesOf(places);
        const position = positionAt(at.latitude, at.longitude, at.elevation);
        const distance = (i: number) =>
          Math.hypot(
            sites.xKm[i] - position.xKm,
            sites.yKm[i] - position.yKm,
            sites.zKm[i] - position.zKm,
            0.2 * (sites.elevationM[i] - position.elevationM),
          );
        const sorted = places.map((_, i) => distance(i)).sort((a, b) => a - b);
        const found = [...nearestSites(sites, position, 8)].map(distance);
        found.forEach((d, k) => {
          expect(d).toBeCloseTo(sorted[k], 6);
        });
        expect(found.length).toBe(Math.min(8, places.length));
      }),
      { seed: 20270101 },
    );
  });

  it('give the nearest site most, the others less', () => {
    const sites = sitesAt([45, 45, 45, 45], [5, 6, 7, 8], [200, 200, 200, 200]);
    const { weight } = siteWeights(sites, positionAt(45, 5.1, 200), lookupSettings);
    expect(weight[0]).toBeGreaterThan(0.8);
  });
});
