import type { GridPoint } from '@neckfall/engine';
import type { Point } from '../drawing/path.ts';
import type { MapFrame } from './map-frame.ts';

/** The ground that a point stands for, on the picture. */
export type Cell = {
  /** Corners from north-west round by the east, px. */
  corners: readonly [Point, Point, Point, Point];
  x: number;
  y: number;
  /** Its width and height through its middle, px. */
  width: number;
  height: number;
  /** 0…1, spread evenly among neighbours, so that shares of few marks come right over many cells. */
  turn: number;
};

/** Half a step about a point on each side, cut at the region's edge; null where nothing is left. */
export function cellOf(
  { latitudeDeg, longitudeDeg }: GridPoint,
  stepDeg: number,
  frame: MapFrame,
): Cell | null {
  const half = stepDeg / 2;
  const along = frame.along(longitudeDeg);
  const [south, north] = [
    Math.max(frame.south, latitudeDeg - half),
    Math.min(frame.north, latitudeDeg + half),
  ];
  const [west, east] = [Math.max(frame.west, along - half), Math.min(frame.east, along + half)];
  if (south >= north || west >= east) return null;
  const { at } = frame;
  const corners = [at(north, west), at(north, east), at(south, east), at(south, west)] as const;
  const [midLatitude, midLongitude] = [(south + north) / 2, (west + east) / 2];
  const [x, y] = at(midLatitude, midLongitude);
  const [left, right] = [at(midLatitude, west), at(midLatitude, east)];
  const [top, foot] = [at(north, midLongitude), at(south, midLongitude)];
  return {
    corners,
    x,
    y,
    width: Math.hypot(right[0] - left[0], right[1] - left[1]),
    height: Math.hypot(foot[0] - top[0], foot[1] - top[1]),
    turn: turnOf(Math.round(latitudeDeg / stepDeg), Math.round(longitudeDeg / stepDeg)),
  };
}

/** Source: Bayer 1973, the matrix of four by four. */
const bayer = [0, 8, 2, 10, 12, 4, 14, 6, 3, 11, 1, 9, 15, 7, 13, 5];

function turnOf(row: number, column: number): number {
  return (bayer[(row & 3) * 4 + (column & 3)] + 0.5) / bayer.length;
}
