import type { MapFrame } from './map-frame.ts';

/** Rings of longitude and latitude in turn, degrees, as the land's outline has them. */
export type Rings = readonly ArrayLike<number>[];

/** A closed shape on the picture: x and y in turn, px. */
export type LandShape = {
  corners: readonly number[];
  /** The same without the sides that were cut at the region's edge: lines, px. */
  coasts: readonly (readonly number[])[];
};

/** Nearer than this to the corner before, a corner is not seen, px. */
const leastPx = 0.8;
/** A straight line on the ground bends on the picture: it is drawn in parts no longer than this, degrees. */
const longestDeg = 2;

/** The land of a region, ring by ring: what lies outside is cut off, across the date line too. */
export function* landShapes(rings: Rings, frame: MapFrame): Generator<LandShape> {
  const leastDeg = (leastPx / 2) * degreesPerPx(frame);
  for (const ring of rings) {
    const [least, most] = spanOf(ring);
    // what reaches over the date line comes twice in the outline, a turn apart
    if (Math.abs((least + most) / 2) > 180) continue;
    const turn = 360;
    for (let shift = -2 * turn; shift <= 2 * turn; shift += turn) {
      if (most + shift < frame.west || least + shift > frame.east) continue;
      const shape = onPicture(cutToBox(thinned(ring, shift, leastDeg), frame), frame);
      if (shape.corners.length >= 6) yield shape;
    }
  }
}

function spanOf(ring: ArrayLike<number>): [number, number] {
  let [least, most] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  for (let i = 0; i < ring.length; i += 2) {
    least = Math.min(least, ring[i]);
    most = Math.max(most, ring[i]);
  }
  return [least, most];
}

/** A ring moved by a turn, without corners that could not be seen: most of them, on a map of all land. */
function thinned(ring: ArrayLike<number>, shift: number, leastDeg: number): number[] {
  const kept: number[] = [];
  let [lastX, lastY] = [Number.NaN, Number.NaN];
  for (let i = 0; i < ring.length; i += 2) {
    if (Math.abs(ring[i] - lastX) < leastDeg && Math.abs(ring[i + 1] - lastY) < leastDeg) continue;
    [lastX, lastY] = [ring[i], ring[i + 1]];
    kept.push(lastX + shift, lastY);
  }
  return kept;
}

/** Across the middle of the picture. */
function degreesPerPx({ at, south, north, meridianDeg }: MapFrame): number {
  const [, top] = at(north, meridianDeg);
  const [, foot] = at(south, meridianDeg);
  return (north - south) / (foot - top);
}

function cutToBox(ring: number[], { west, east, south, north }: MapFrame): number[] {
  let cut = ring;
  cut = cutAt(cut, 0, west, 1);
  cut = cutAt(cut, 0, east, -1);
  cut = cutAt(cut, 1, south, 1);
  return cutAt(cut, 1, north, -1);
}

/** Keeps what lies on one side of a line. Source: Sutherland & Hodgman 1974. */
function cutAt(ring: readonly number[], axis: 0 | 1, limit: number, side: 1 | -1): number[] {
  const kept: number[] = [];
  const count = ring.length;
  for (let i = 0; i < count; i += 2) {
    const before = (i + count - 2) % count;
    const here = (ring[i + axis] - limit) * side;
    const there = (ring[before + axis] - limit) * side;
    if (here >= 0 !== there >= 0) {
      const part = there / (there - here);
      kept.push(
        ring[before] + (ring[i] - ring[before]) * part,
        ring[before + 1] + (ring[i + 1] - ring[before + 1]) * part,
      );
    }
    if (here >= 0) kept.push(ring[i], ring[i + 1]);
  }
  return kept;
}

function onPicture(ring: readonly number[], frame: MapFrame): LandShape {
  const corners: number[] = [];
  const coasts: number[][] = [];
  let coast: number[] = [];
  const count = ring.length;
  let [lastX, lastY] = [Number.NaN, Number.NaN];
  for (let i = 0; i < count; i += 2) {
    const before = (i + count - 2) % count;
    const [x0, y0] = [ring[before], ring[before + 1]];
    const [dx, dy] = [ring[i] - x0, ring[i + 1] - y0];
    const isCut = liesOnEdge(x0, y0, ring[i], ring[i + 1], frame);
    if (isCut && coast.length > 0) {
      coasts.push(coast);
      coast = [];
    }
    const parts = Math.max(1, Math.ceil(Math.max(Math.abs(dx), Math.abs(dy)) / longestDeg));
    for (let part = 1; part <= parts; part++) {
      const [x, y] = frame.at(y0 + (dy * part) / parts, x0 + (dx * part) / parts);
      if (Math.abs(x - lastX) < leastPx && Math.abs(y - lastY) < leastPx) continue;
      corners.push(x, y);
      if (!isCut) {
        if (coast.length === 0 && !Number.isNaN(lastX)) coast.push(lastX, lastY);
        coast.push(x, y);
      }
      [lastX, lastY] = [x, y];
    }
  }
  if (coast.length > 0) coasts.push(coast);
  return { corners, coasts };
}

/** Whether both ends of a side lie on one edge of the region. */
function liesOnEdge(x0: number, y0: number, x1: number, y1: number, frame: MapFrame): boolean {
  const { west, east, south, north } = frame;
  const isAt = (a: number, b: number, edge: number) => Math.abs(a - edge) < 1e-6 && Math.abs(b - edge) < 1e-6;
  return isAt(x0, x1, west) || isAt(x0, x1, east) || isAt(y0, y1, south) || isAt(y0, y1, north);
}
