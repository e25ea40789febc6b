import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { gridPoints } from '../../../engine/src/index.ts';
import { isOfShard, tilesOf } from '../../src/atlas/tiles.ts';

const regions = fc
  .record({
    southDeg: fc.integer({ min: -60, max: 60 }),
    height: fc.integer({ min: 0, max: 40 }),
    westDeg: fc.integer({ min: -180, max: 180 }),
    eastDeg: fc.integer({ min: -180, max: 180 }),
    stepDeg: fc.constantFrom(0.5, 0.7, 1, 2, 3.3, 10),
  })
  .map(({ southDeg, height, westDeg, eastDeg, stepDeg }) => ({
    box: { southDeg, northDeg: Math.min(90, southDeg + height), westDeg, eastDeg },
    stepDeg,
  }));

describe('tiles', () => {
  test('hold every point of the grid once, in its order', () => {
    fc.assert(
      fc.property(regions, (map) => {
        const tiles = tilesOf(map);
        const all = Array.from({ length: tiles.count }, (_, tile) => tiles.points(tile)).flat();
        expect(all).toEqual([...gridPoints(map.box, map.stepDeg)]);
        expect(
          new Set(all.map(({ latitudeDeg, longitudeDeg }) => `${latitudeDeg} ${longitudeDeg}`)).size,
        ).toBe(all.length);
      }),
      { seed: 20261130, numRuns: 60 },
    );
  });

  test('belong to one shard each', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 40 }), fc.integer({ min: 0, max: 10_000 }), (of, tile) => {
        const shards = Array.from({ length: of }, (_, at) => ({ number: at + 1, of }));
        expect(shards.filter((shard) => isOfShard(tile, shard))).toHaveLength(1);
      }),
      { seed: 20261130 },
    );
  });
});
