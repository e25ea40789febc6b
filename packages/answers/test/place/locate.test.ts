import { findTowns } from '@neckfall/data';
import { loadGazetteer, loadLandMask, readClimateNodes } from '@neckfall/data/node';
import { coverageKm } from '@neckfall/engine';
import { speaker } from '@neckfall/words';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { locatePoint, locateTown, townLabel } from '../../src/index.ts';

const gazetteer = loadGazetteer();
const land = loadLandMask();
const climate = readClimateNodes();
const assets = { gazetteer: () => gazetteer, land: () => land, climate: () => climate };
const [lyon] = findTowns(gazetteer, 'Lyon', 1).towns;

test('a town that is called as its country is said once', () => {
  const [singapore] = findTowns(gazetteer, 'Singapore', 1).towns;
  expect(townLabel(singapore, speaker('metric'))).toBe('Singapore');
  expect(townLabel(lyon, speaker('metric'))).toBe('Lyon, France');
});

describe('a town', () => {
  test('brings its own elevation and time zone', () => {
    const place = locateTown(lyon, [], null, assets);
    expect(place).toMatchObject({
      town: lyon,
      elevationM: lyon.elevationM,
      elevationFrom: 'town',
      timeZone: 'Europe/Paris',
    });
  });

  test("gives way to the grower's own elevation, in the climate too", () => {
    const low = locateTown(lyon, [], null, assets);
    const high = locateTown(lyon, [], lyon.elevationM + 500, assets);
    if ('problem' in low || 'problem' in high) throw new Error('Lyon is covered');
    expect(high.elevationFrom).toBe('given');
    expect(high.climate.tempMeanC[0]).toBeLessThan(low.climate.tempMeanC[0] - 1);
  });

  test('is refused where it lies beyond the land covered', () => {
    expect(locateTown({ ...lyon, latitudeDeg: 72.5 }, [], null, assets)).toEqual({
      problem: 'beyond-latitudes',
    });
  });
});

describe('a point', () => {
  test('at sea is told the nearest town', () => {
    const found = locatePoint({ latitudeDeg: 45, longitudeDeg: -30, elevationM: null }, assets);
    expect(found).toMatchObject({ problem: 'at-sea' });
  });

  test('takes the elevation of a town that is nearer than the nearest record', () => {
    const { latitudeDeg, longitudeDeg } = lyon;
    const found = locatePoint({ latitudeDeg, longitudeDeg, elevationM: null }, assets);
    expect(found).toMatchObject({ town: null, elevationFrom: 'near-town', elevationM: lyon.elevationM });
  });

  test('anywhere on Earth is a covered place near a town, or has a reason not to be', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -90, max: 90, noNaN: true }),
        fc.double({ min: -180, max: 180, noNaN: true }),
        (latitudeDeg, longitudeDeg) => {
          const found = locatePoint({ latitudeDeg, longitudeDeg, elevationM: null }, assets);
          if ('problem' in found) {
            if (found.problem === 'beyond-nodes') expect(found.nearestNodeKm).toBeGreaterThan(coverageKm);
            if (found.problem === 'beyond-latitudes')
              expect(latitudeDeg < -60 || latitudeDeg > 72).toBe(true);
            return;
          }
          expect(found.climate.nearestNodeKm).toBeLessThanOrEqual(coverageKm);
          expect(found.near?.town.timeZone).toBe(found.timeZone);
          expect(Number.isFinite(found.elevationM)).toBe(true);
        },
      ),
      { seed: 20261125, numRuns: 300 },
    );
  });
});
