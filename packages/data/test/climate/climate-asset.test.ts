import { readFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { climateAt, climateFields, coverageKm } from '../../../engine/src/climate/index.ts';
import { climateAssetPath, readClimateNodes } from '../../src/climate/index.ts';
import { isLand } from '../../src/places/index.ts';
import { loadLandMask } from '../../src/places/node.ts';

const nodes = readClimateNodes();

describe('shipped climatology', () => {
  it('has at most 6,000 nodes in at most 400 kB', () => {
    expect(nodes.count).toBeLessThanOrEqual(6000);
    expect(readFileSync(climateAssetPath).length).toBeLessThanOrEqual(400_000);
  });

  it('answers every land point with sane numbers', () => {
    const land = loadLandMask();
    const point = fc
      .record({
        latitude: fc.double({ min: -60, max: 72, noNaN: true }),
        longitude: fc.double({ min: -180, max: 180, noNaN: true }),
        elevation: fc.option(fc.double({ min: -400, max: 5500, noNaN: true }), { nil: null }),
      })
      .filter(({ latitude, longitude }) => isLand(land, latitude, longitude));
    fc.assert(
      fc.property(point, ({ latitude, longitude, elevation }) => {
        const climate = climateAt(nodes, latitude, longitude, elevation);
        for (const field of climateFields) expect(climate[field].every(Number.isFinite)).toBe(true);
        for (const field of ['rainMm', 'wetDays', 'frostNights', 'sunshinePct'] as const) {
          expect(Math.min(...climate[field])).toBeGreaterThanOrEqual(0);
        }
        expect(Math.max(...climate.relativeHumidityPct, ...climate.sunshinePct)).toBeLessThanOrEqual(100);
        expect(climate.minTempSdC.every((sd) => sd >= 1.5 && sd <= 7)).toBe(true);
        expect(climate.elevationM).toBe(elevation ?? climate.elevationM);
        expect(climate.elevationFrom).toBe(elevation === null ? 'nearest-node' : 'given');
      }),
      { seed: 20270101, numRuns: 300 },
    );
  });

  it('is the same on both sides of the date line', () => {
    for (const latitude of [-44, -17, 0, 52, 66]) {
      const west = climateAt(nodes, latitude, 180, 50);
      const east = climateAt(nodes, latitude, -180, 50);
      for (const field of climateFields) {
        east[field].forEach((value, month) => {
          expect(value).toBeCloseTo(west[field][month], 6);
        });
      }
    }
  });

  it('is one climate at a pole, whatever the longitude', () => {
    const here = climateAt(nodes, 90, 0, 0);
    const there = climateAt(nodes, 90, 137, 0);
    here.tempMeanC.forEach((value, month) => {
      expect(value).toBeCloseTo(there.tempMeanC[month], 6);
    });
  });

  it('cools upwards at one place, by about the lapse', () => {
    const valley = climateAt(nodes, 46.95, 7.45, 500);
    const hill = climateAt(nodes, 46.95, 7.45, 1500);
    const cooling = valley.tempMeanC.map((value, month) => value - hill.tempMeanC[month]);
    expect(cooling.reduce((sum, value) => sum + value, 0) / 12).toBeGreaterThan(3);
    expect(cooling.reduce((sum, value) => sum + value, 0) / 12).toBeLessThan(8);
  });

  it('says how far the nearest node is and how rough the country', () => {
    const lyon = climateAt(nodes, 45.76, 4.84, 175);
    expect(lyon.nearestNodeKm).toBeLessThan(coverageKm);
    const midPacific = climateAt(nodes, -40, -120, 0);
    expect(midPacific.nearestNodeKm).toBeGreaterThan(1000);
    expect(midPacific.nodeElevationSpreadM).toBe(0);
    expect(climateAt(nodes, 46.5, 8, null).nodeElevationSpreadM).toBeGreaterThan(300); // in the Alps
  });

  it.each<[number, number, number | null, string]>([
    [91, 0, null, 'latitude 91: expected -90 to 90 degrees'],
    [Number.NaN, 0, null, 'latitude NaN'],
    [0, 180.5, null, 'longitude 180.5: expected -180 to 180 degrees'],
    [0, 0, 12000, 'elevation 12000: expected -500 to 9000 m'],
  ])('refuses %s, %s, %s', (latitude, longitude, elevation, message) => {
    expect(() => climateAt(nodes, latitude, longitude, elevation)).toThrow(message);
  });

  it('names a file it cannot read', () => {
    expect(() => readClimateNodes(join(tmpdir(), 'no-such-climate.bin'))).toThrow('no-such-climate.bin');
    expect(() => readClimateNodes(new URL(import.meta.url).pathname)).toThrow('climate-asset.test.ts');
  });
});
