import type { Region } from '@neckfall/engine';
import { ink } from '../drawing/ink.ts';
import { linePath, type Point } from '../drawing/path.ts';
import { Picture } from '../drawing/picture.tsx';
import { cellOf } from './cell.ts';
import { landShapes, type Rings } from './land-shapes.ts';
import { type MapFrame, mapFrame } from './map-frame.ts';
import { keyLayout, MapKey, type MapKeyWords } from './map-key.tsx';
import { drawCell, rowWidth } from './map-marks.ts';
import type { MapPoint, MapShows } from './map-shows.ts';
import { MarkPaths } from './mark-paths.tsx';
import { svgPen } from './svg-pen.ts';

export type AtlasMapProps = {
  region: Region;
  points: readonly MapPoint[];
  /** From point to point, degrees. */
  stepDeg: number;
  shows: MapShows;
  /** Coastlines as the data package reads them. */
  outline: Rings;
  words: MapKeyWords & { summary: string };
  width: number;
  /** Of the ground, px; its width unless given. */
  mostHeight?: number;
};

/** Onions of a region: a field at each point, seen from above, on the land alone. */
export function AtlasMap(props: AtlasMapProps) {
  const { region, points, stepDeg, shows, outline, words, width, mostHeight = width } = props;
  const frame = mapFrame(region, width, mostHeight);
  const shapes = [...landShapes(outline, frame)];
  const land = shapes.map(({ corners }) => `${linePath(pairs(corners))}Z`).join('');
  const coasts = shapes.flatMap((shape) => shape.coasts.map((coast) => linePath(pairs(coast)))).join('');
  const discPx = discPxOf(stepDeg, frame);
  const key = keyLayout(shows, words, width, frame.height + 8);
  const pen = svgPen();
  for (const point of points) {
    const cell = cellOf(point, stepDeg, frame);
    if (cell) drawCell(cell, point.entry, shows, discPx, pen);
  }
  return (
    <Picture name="atlas" summary={words.summary} width={width} height={key.foot}>
      <clipPath id="atlas-land">
        <path d={land} />
      </clipPath>
      <path d={land} fill={ink.paper2} />
      <path d={coasts} fill="none" stroke={ink.line} stroke-width={0.8} />
      <g clip-path="url(#atlas-land)">
        <MarkPaths paths={pen.paths()} rowWidth={rowWidthOf(stepDeg, frame)} />
      </g>
      <MapKey layout={key} discPx={discPx} />
    </Picture>
  );
}

/** Rows of a picture are drawn equally thick, px: as suits a cell in its middle. */
export function rowWidthOf(stepDeg: number, frame: MapFrame): number {
  const middle = { latitudeDeg: (frame.south + frame.north) / 2, longitudeDeg: frame.meridianDeg };
  const cell = cellOf(middle, stepDeg, frame);
  return cell ? rowWidth(cell) : 1;
}

/** Furthest from the equator that discs are made for, degrees: nearer to the poles they may touch. */
const discsUpToDeg = 55;

/** Across a disc of the largest bulb, px: the same all over a picture. */
export function discPxOf(stepDeg: number, frame: MapFrame): number {
  const farthest = Math.abs(frame.north) > Math.abs(frame.south) ? frame.north : frame.south;
  const latitudeDeg = Math.sign(farthest) * Math.min(discsUpToDeg, Math.abs(farthest) - stepDeg);
  const cell = cellOf({ latitudeDeg, longitudeDeg: frame.meridianDeg }, stepDeg, frame);
  return cell ? Math.min(cell.width, cell.height) : 1;
}

function pairs(flat: readonly number[]): Point[] {
  const points: Point[] = [];
  for (let i = 0; i < flat.length; i += 2) points.push([flat[i], flat[i + 1]]);
  return points;
}
