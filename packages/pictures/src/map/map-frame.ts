import type { GridPoint, Region } from '@neckfall/engine';
import type { Point } from '../drawing/path.ts';
import { besideMeridian, equalEarth, lambertEqualArea, type Projection } from './projection.ts';

/** Where the ground of a region lies on a picture, px. */
export type MapFrame = {
  width: number;
  height: number;
  region: Region;
  /** Edges of the region, degrees; longitudes run on from west to east. */
  south: number;
  north: number;
  west: number;
  east: number;
  meridianDeg: number;
  /** @param longitudeDeg one that runs on from the region's west */
  at: (latitudeDeg: number, longitudeDeg: number) => Point;
  /** Longitude as it runs on from the region's west, degrees. */
  along: (longitudeDeg: number) => number;
  /** The ground at a point of the picture; null where none of the region lies. */
  groundAt: (x: number, y: number) => GridPoint | null;
};

/** A region as wide as this is drawn as the Earth is, degrees. */
const wholeFrom = 180;
/** Cuts the Earth in the Bering Strait, where no land lies, degrees. */
const wholeMeridian = 11;
const pad = 2;
const samples = 24;

/**
 * Lays a region out for a width, as large as goes. North is up at its middle.
 * @param mostHeight px; a taller region is drawn narrower
 */
export function mapFrame(region: Region, width: number, mostHeight: number): MapFrame {
  const { southDeg: south, northDeg: north } = region;
  const wide =
    region.eastDeg < region.westDeg ? region.eastDeg + 360 - region.westDeg : region.eastDeg - region.westDeg;
  const isWhole = wide >= wholeFrom;
  const meridianDeg = wide > 359 ? wholeMeridian : region.westDeg + wide / 2;
  const west = wide > 359 ? meridianDeg - 180 : region.westDeg;
  const east = wide > 359 ? meridianDeg + 180 : region.westDeg + wide;
  const projection: Projection = isWhole
    ? equalEarth(meridianDeg)
    : lambertEqualArea((south + north) / 2, meridianDeg);
  const edge = edges(south, north, west, east).map(([latitude, longitude]) =>
    projection.toPlane(latitude, longitude),
  );
  const [left, right] = [Math.min(...edge.map(([x]) => x)), Math.max(...edge.map(([x]) => x))];
  const [foot, top] = [Math.min(...edge.map(([, y]) => y)), Math.max(...edge.map(([, y]) => y))];
  const scale = Math.min((width - 2 * pad) / (right - left), (mostHeight - 2 * pad) / (top - foot));
  const height = (top - foot) * scale + 2 * pad;
  const [midX, topY] = [(left + right) / 2, top];
  const along = (longitudeDeg: number) => besideMeridian(longitudeDeg, meridianDeg);
  return {
    width,
    height,
    region,
    south,
    north,
    west,
    east,
    meridianDeg,
    along,
    at(latitudeDeg, longitudeDeg) {
      const [x, y] = projection.toPlane(latitudeDeg, longitudeDeg);
      return [width / 2 + (x - midX) * scale, pad + (topY - y) * scale];
    },
    groundAt(x, y) {
      const ground = projection.toGround((x - width / 2) / scale + midX, topY - (y - pad) / scale);
      if (ground === null) return null;
      const { latitudeDeg, longitudeDeg } = ground;
      const eastward = along(longitudeDeg);
      const isIn = latitudeDeg >= south && latitudeDeg <= north && eastward >= west && eastward <= east;
      return isIn ? ground : null;
    },
  };
}

/** Points round the edge, and along the equator where a region is widest there. */
function edges(south: number, north: number, west: number, east: number): [number, number][] {
  const points: [number, number][] = [];
  const widest = Math.min(north, Math.max(south, 0));
  for (let i = 0; i <= samples; i++) {
    const longitude = west + ((east - west) * i) / samples;
    const latitude = south + ((north - south) * i) / samples;
    points.push(
      [south, longitude],
      [north, longitude],
      [widest, longitude],
      [latitude, west],
      [latitude, east],
    );
  }
  return points;
}
