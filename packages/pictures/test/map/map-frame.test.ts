import { atlasRegionNames, atlasRegions } from '@neckfall/answers';
import { loadLandOutline } from '@neckfall/data/node';
import { gridPoints, type Region, wholeWorld } from '@neckfall/engine';
import { geoAzimuthalEqualArea, geoEqualEarth } from 'd3-geo';
import { describe, expect, test } from 'vitest';
import { cellOf } from '../../src/map/cell.ts';
import { landShapes } from '../../src/map/land-shapes.ts';
import { mapFrame } from '../../src/map/map-frame.ts';
import { equalEarth, lambertEqualArea } from '../../src/map/projection.ts';

const outline = loadLandOutline();
/** Taveuni, which the date line crosses, is among them. */
const fiji: Region = { southDeg: -21, westDeg: 176, northDeg: -15, eastDeg: -178 };

const places: [latitude: number, longitude: number][] = [
  [0, 0],
  [60, 25],
  [-41.3, 174.8],
  [71, -156],
  [-55, -68],
  [35, 139],
];

describe('projections agree with d3-geo, an independent library, and lead back', () => {
  test.each([
    ['Equal Earth', equalEarth(11), geoEqualEarth().rotate([-11, 0]).scale(1).translate([0, 0])],
    [
      'Lambert',
      lambertEqualArea(53, 10),
      geoAzimuthalEqualArea().rotate([-10, -53]).scale(1).translate([0, 0]).clipAngle(null),
    ],
  ])('%s', (_, own, theirs) => {
    for (const [latitude, longitude] of places) {
      const [x, y] = own.toPlane(latitude, longitude > 191 ? longitude - 360 : longitude);
      const [theirX, theirY] = theirs([longitude, latitude])!;
      // theirs takes longitudes round to its own side
      if (Math.abs(longitude - 11) < 180) expect(x).toBeCloseTo(theirX, 5);
      expect(-y).toBeCloseTo(theirY, 5);
      const back = own.toGround(x, y)!;
      expect(back.latitudeDeg).toBeCloseTo(latitude, 5);
      expect(back.longitudeDeg).toBeCloseTo(longitude, 5);
    }
  });
});

/** Area of a shape with corners in turn, px². */
function areaOf(corners: readonly (readonly [number, number])[]): number {
  const sum = corners.reduce((total, [x, y], at) => {
    const [nextX, nextY] = corners[(at + 1) % corners.length];
    return total + x * nextY - nextX * y;
  }, 0);
  return Math.abs(sum) / 2;
}

test.each(['all', 'europe', 'africa', 'north-america'] as const)(
  '%s: cells of equal area on the ground are equal on the picture, within a hundredth',
  (name) => {
    const frame = mapFrame(atlasRegions[name], 1000, 1000);
    const areas = [0, 20, 35, 48, 60, -30].flatMap((latitudeDeg) => {
      if (latitudeDeg - 1 < frame.south || latitudeDeg + 1 > frame.north) return [];
      const longitudeDeg = Math.round(frame.meridianDeg) + 12;
      const cell = cellOf({ latitudeDeg, longitudeDeg }, 2, frame)!;
      // on a sphere: the width in radians times the difference of the sines of its edges
      const sine = (degrees: number) => Math.sin((degrees * Math.PI) / 180);
      const ground = sine(latitudeDeg + 1) - sine(latitudeDeg - 1);
      return [areaOf(cell.corners) / ground];
    });
    expect(areas.length).toBeGreaterThan(1);
    expect(Math.max(...areas) / Math.min(...areas)).toBeLessThan(1.01);
  },
);

test.each([...atlasRegionNames.map((name) => [name, atlasRegions[name]] as const), ['fiji', fiji] as const])(
  '%s: land and cells lie inside the picture, and no side of a coast smears across it',
  (_, region) => {
    const frame = mapFrame(region, 800, 700);
    expect(frame.height).toBeLessThan(700.01);
    const isInside = (x: number, y: number) =>
      x >= -0.01 && x <= 800.01 && y >= -0.01 && y <= frame.height + 0.01;
    let shapes = 0;
    for (const { corners, coasts } of landShapes(outline, frame)) {
      shapes++;
      for (let i = 0; i < corners.length; i += 2) expect(isInside(corners[i], corners[i + 1])).toBe(true);
      for (const coast of coasts) {
        for (let i = 2; i < coast.length; i += 2) {
          const side = Math.hypot(coast[i] - coast[i - 2], coast[i + 1] - coast[i - 1]);
          expect(side).toBeLessThan(120);
        }
      }
    }
    expect(shapes).toBeGreaterThan(0);
    for (const point of gridPoints(region, 4)) {
      const cell = cellOf(point, 4, frame);
      for (const [x, y] of cell?.corners ?? []) expect(isInside(x, y)).toBe(true);
    }
  },
);

test('a region across the date line is one piece: its middle lies in the middle', () => {
  const frame = mapFrame(fiji, 600, 600);
  const [x] = frame.at(-18, frame.along(-179.9));
  const [before] = frame.at(-18, frame.along(179.9));
  expect(x - before).toBeGreaterThan(0);
  expect(x - before).toBeLessThan(60);
  expect(frame.groundAt(300, frame.height / 2)?.longitudeDeg).toBeCloseTo(179, 0);
});

test('what is beside the region is no ground of it', () => {
  const frame = mapFrame(wholeWorld, 1000, 1000);
  expect(frame.groundAt(1, 1)).toBeNull();
  expect(frame.groundAt(500, 200)).not.toBeNull();
});
