import type { Region } from '@neckfall/engine';
import { ink } from '../drawing/ink.ts';
import { linePath, type Point } from '../drawing/path.ts';
import { Picture } from '../drawing/picture.tsx';
import { cellOf } from './cell.ts';
import { type LandShape, landShapes, type Rings } from './land-shapes.ts';
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
  const land = [...landShapes(outline, frame)].map(shapePath).join('');
  const key = keyLayout(shows, words, width, frame.height + 8);
  const pen = svgPen();
  for (const point of points) {
    const cell = cellOf(point, stepDeg, frame);
    if (cell) drawCell(cell, point.entry, shows, pen);
  }
  return (
    <Picture name="atlas" summary={words.summary} width={width} height={key.foot}>
      <clipPath id="atlas-land">
        <path d={land} />
      </clipPath>
      <path d={land} fill={ink.paper2} stroke={ink.line} stroke-width={0.8} />
      <g clip-path="url(#atlas-land)">
        <MarkPaths paths={pen.paths()} rowWidth={rowWidthOf(stepDeg, frame)} />
      </g>
      <MapKey layout={key} />
    </Picture>
  );
}

/** Rows of a picture are drawn equally thick, px: as suits a cell in its middle. */
export function rowWidthOf(stepDeg: number, frame: MapFrame): number {
  const middle = { latitudeDeg: (frame.south + frame.north) / 2, longitudeDeg: frame.meridianDeg };
  const cell = cellOf(middle, stepDeg, frame);
  return cell ? rowWidth(cell) : 1;
}

function shapePath(shape: LandShape): string {
  const points: Point[] = [];
  for (let i = 0; i < shape.length; i += 2) points.push([shape[i], shape[i + 1]]);
  return `${linePath(points)}Z`;
}
