import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { feature } from 'topojson-client';
import type { GeometryCollection, Topology } from 'topojson-specification';
import {
  LAND_HEADER_BYTES,
  LAND_MAGIC,
  LAND_VERSION,
  landCell,
  landRowBytes,
} from '../../packages/data/src/places/land-mask.ts';
import { packSections } from '../../packages/data/src/places/sections.ts';

type Point = readonly [longitudeDeg: number, latitudeDeg: number];

const CELLS_PER_DEGREE = 20;
/** Antarctica is left out; the northernmost land lies at 83.7° N. */
const SOUTH_DEG = -60;
const NORTH_DEG = 84;
const GRID = {
  cellsPerDegree: CELLS_PER_DEGREE,
  southDeg: SOUTH_DEG,
  rows: (NORTH_DEG - SOUTH_DEG) * CELLS_PER_DEGREE,
};
/** A town on the edge of a cell is land on either side, however its coordinates are rounded. */
const ROUNDING_DEG = 0.001;
/** Scan lines through each row of cells, so that a cell with any land much wider than 500 m is found. */
const LINES_PER_CELL = 10;

/** The land mask asset, not yet compressed: every cell touched by land of Natural Earth, or with a town in it. */
export function rasteriseLand(towns: readonly { latitudeDeg: number; longitudeDeg: number }[]): Uint8Array {
  const bits = new Uint8Array(GRID.rows * landRowBytes(CELLS_PER_DEGREE));
  const mark = (latitudeDeg: number, longitudeDeg: number) => {
    const cell = landCell(GRID, latitudeDeg, longitudeDeg);
    if (cell !== null) bits[cell >> 3] |= 1 << (cell & 7);
  };
  for (const rings of landPolygons()) if (!isNullIsland(rings)) fillPolygon(rings, mark);
  for (const { latitudeDeg, longitudeDeg } of towns) {
    for (const north of [-ROUNDING_DEG, 0, ROUNDING_DEG]) {
      for (const east of [-ROUNDING_DEG, 0, ROUNDING_DEG]) mark(latitudeDeg + north, longitudeDeg + east);
    }
  }

  const rowBytes = landRowBytes(CELLS_PER_DEGREE);
  for (let i = bits.length - 1; i >= rowBytes; i--) bits[i] ^= bits[i - rowBytes];
  const header = new Uint8Array(LAND_HEADER_BYTES);
  const view = new DataView(header.buffer);
  [CELLS_PER_DEGREE, SOUTH_DEG, GRID.rows].forEach((value, i) => {
    view.setInt16(2 * i, value, true);
  });
  return packSections(LAND_MAGIC, LAND_VERSION, [header, bits]);
}

function landPolygons(): Point[][][] {
  const file = createRequire(import.meta.url).resolve('world-atlas/land-10m.json');
  const topology = JSON.parse(readFileSync(file, 'utf8')) as Topology<{ land: GeometryCollection }>;
  return feature(topology, topology.objects.land).features.flatMap(({ geometry }) => {
    if (geometry.type === 'Polygon') return [geometry.coordinates as unknown as Point[][]];
    if (geometry.type === 'MultiPolygon') return geometry.coordinates as unknown as Point[][][];
    throw new Error(`land of world-atlas: a ${geometry.type} where polygons were expected`);
  });
}

/** Natural Earth draws a square of 1 km around 0° N, 0° E to show coordinates gone wrong; there is only sea. */
function isNullIsland(rings: readonly (readonly Point[])[]): boolean {
  return rings[0].every(([longitude, latitude]) => Math.abs(longitude) < 0.1 && Math.abs(latitude) < 0.1);
}

/** Rings on the sphere may cross the date line: each is unrolled, so that neighbours are < 180° apart. */
function unrolled(ring: readonly Point[]): Point[] {
  let turn = 0;
  return ring.map(([longitude, latitude], i) => {
    const step = i === 0 ? 0 : longitude - ring[i - 1][0];
    if (step > 180) turn -= 360;
    if (step < -180) turn += 360;
    return [longitude + turn, latitude];
  });
}

/** Even-odd along lines of latitude. A ring around the pole (Antarctica) lies outside our rows but for vertices. */
function fillPolygon(
  rings: readonly (readonly Point[])[],
  mark: (latitudeDeg: number, longitudeDeg: number) => void,
) {
  const crossings = new Map<number, number[]>();
  const linesPerDegree = CELLS_PER_DEGREE * LINES_PER_CELL;
  const firstLongitude = rings[0][0][0];
  for (const ring of rings.map(unrolled)) {
    // A hole is brought to the same turn as the outer ring.
    const turn = 360 * Math.round((firstLongitude - ring[0][0]) / 360);
    for (let i = 0; i + 1 < ring.length; i++) {
      const [x0, y0] = ring[i];
      const [x1, y1] = ring[i + 1];
      mark(y0, x0);
      if (y0 === y1) continue;
      const [low, high] = y0 < y1 ? [y0, y1] : [y1, y0];
      for (let line = Math.ceil(low * linesPerDegree - 0.5); (line + 0.5) / linesPerDegree < high; line++) {
        const y = (line + 0.5) / linesPerDegree;
        const x = x0 + ((x1 - x0) * (y - y0)) / (y1 - y0) + turn;
        const list = crossings.get(line);
        if (list === undefined) crossings.set(line, [x]);
        else list.push(x);
      }
    }
  }
  for (const [line, xs] of crossings) {
    const y = (line + 0.5) / linesPerDegree;
    if (y < SOUTH_DEG || y >= NORTH_DEG) continue;
    xs.sort((a, b) => a - b);
    if (xs.length % 2 !== 0) throw new Error(`land of world-atlas: ${xs.length} coasts along latitude ${y}`);
    for (let i = 0; i < xs.length; i += 2) {
      for (
        let column = Math.floor(xs[i] * CELLS_PER_DEGREE);
        column <= xs[i + 1] * CELLS_PER_DEGREE;
        column++
      ) {
        mark(y, (column + 0.5) / CELLS_PER_DEGREE);
      }
    }
  }
}
