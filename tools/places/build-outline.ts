// npx tsx tools/places/build-outline.ts --out packages/data/assets: the coastlines of the app's map.
import { readFileSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join } from 'node:path';
import { parseArgs } from 'node:util';
import type { MultiPolygon } from 'geojson';
import { feature } from 'topojson-client';
import type { GeometryCollection, Topology } from 'topojson-specification';

/** Steps of a degree in which points are kept: a quarter of a pixel of the map drawn as large as it goes. */
const stepsPerDegree = 20;
/** No crop is planned south of this. */
const southernmostDeg = -60;

const { values } = parseArgs({ options: { out: { type: 'string' } } });
if (!values.out) throw new Error('--out FOLDER: where to write land-outline.txt');
const source = createRequire(import.meta.url).resolve('world-atlas/land-50m.json');
const topology = JSON.parse(readFileSync(source, 'utf8')) as Topology<{ land: GeometryCollection }>;
const rings = feature(topology, topology.objects.land).features.flatMap(({ geometry }) =>
  (geometry as MultiPolygon).coordinates.flat(),
);

/** Differences from point to point, longitude and latitude in turn; points that fall together are one. */
function packed(ring: number[][]): number[] {
  const differences: number[] = [];
  let [x, y] = [0, 0];
  for (const [longitude, latitude] of ring) {
    const [nextX, nextY] = [longitude, latitude].map((degrees) => Math.round(degrees * stepsPerDegree));
    if (differences.length > 0 && nextX === x && nextY === y) continue;
    differences.push(nextX - x, nextY - y);
    [x, y] = [nextX, nextY];
  }
  return differences;
}

/** Rings that cross 180° run on beyond it, and are drawn once on each edge of the map. */
function unbroken(ring: number[][]): number[][][] {
  let turn = 0;
  const line = ring.map(([longitude, latitude], at) => {
    const step = at === 0 ? 0 : longitude - ring[at - 1][0];
    if (Math.abs(step) > 180) turn -= 360 * Math.sign(step);
    return [longitude + turn, latitude];
  });
  const longitudes = line.map(([longitude]) => longitude);
  const shifted = (by: number) => line.map(([longitude, latitude]) => [longitude + by, latitude]);
  if (Math.max(...longitudes) > 180) return [line, shifted(-360)];
  if (Math.min(...longitudes) < -180) return [line, shifted(360)];
  return [line];
}

const isShown = (ring: number[][]) => ring.some(([, latitude]) => latitude > southernmostDeg);
const kept = rings
  .filter(isShown)
  .flatMap(unbroken)
  .map(packed)
  .filter((ring) => ring.length >= 8);
writeFileSync(join(values.out, 'land-outline.txt'), JSON.stringify({ stepsPerDegree, rings: kept }));
