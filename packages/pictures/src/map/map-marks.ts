import { isBareGround } from '@neckfall/answers';
import {
  type AtlasFigures,
  civilDate,
  type DayNumber,
  dayOfYear,
  daysInYear,
  type OnionType,
} from '@neckfall/engine';
import type { InkName } from '../drawing/ink.ts';
import type { Point } from '../drawing/path.ts';
import type { Cell } from './cell.ts';
import type { MapShows } from './map-shows.ts';

/** Marks of one look, drawn in one go. */
export type MarkLook = 'bare' | OnionType | 'good' | Quarter | `tint-${Quarter}` | 'disc';
type Quarter = `quarter-${1 | 2 | 3 | 4}`;

/** Draws marks; px. */
export type Pen = {
  line: (look: MarkLook, from: Point, to: Point) => void;
  area: (look: MarkLook, corners: readonly Point[]) => void;
  disc: (look: MarkLook, x: number, y: number, radius: number) => void;
};

type Inking = { colour: InkName; way: 'stroke' | 'fill'; opacity: number };

/** In the order in which they are drawn. */
export const inkings: Readonly<Record<MarkLook, Inking>> = {
  bare: { colour: 'ink2', way: 'fill', opacity: 0.55 },
  'tint-quarter-1': { colour: 'sky', way: 'fill', opacity: 0.26 },
  'tint-quarter-2': { colour: 'leaf', way: 'fill', opacity: 0.24 },
  'tint-quarter-3': { colour: 'skin2', way: 'fill', opacity: 0.34 },
  'tint-quarter-4': { colour: 'earth', way: 'fill', opacity: 0.3 },
  'quarter-1': { colour: 'sky', way: 'fill', opacity: 1 },
  'quarter-2': { colour: 'leaf', way: 'fill', opacity: 1 },
  'quarter-3': { colour: 'skin', way: 'fill', opacity: 1 },
  'quarter-4': { colour: 'earth', way: 'fill', opacity: 1 },
  'tropical-short': { colour: 'earth', way: 'stroke', opacity: 1 },
  short: { colour: 'skin', way: 'stroke', opacity: 1 },
  intermediate: { colour: 'ink', way: 'stroke', opacity: 1 },
  'early-long': { colour: 'sky', way: 'stroke', opacity: 1 },
  'northern-long': { colour: 'leaf', way: 'stroke', opacity: 1 },
  good: { colour: 'leaf', way: 'stroke', opacity: 1 },
  disc: { colour: 'skin', way: 'fill', opacity: 1 },
};

/** Slope of the rows: from lying flat for the shortest days to upright for the longest, degrees. */
export const slopeOf: Readonly<Record<OnionType, number>> = {
  'tropical-short': 0,
  short: 22.5,
  intermediate: 45,
  'early-long': 67.5,
  'northern-long': 90,
};

/** A bulb as large as this fills the room of a disc, mm. */
const largestMm = 100;
/** Rows of a whole field: the good years in ten. */
const mostRows = 10;
/** Rows stand no nearer than this, px. */
const rowPx = 3.1;
/** Share of a cell that is planted: the rest is the path beside it. */
const planted = 0.86;

/** Draws what a cell shows of the onion that leads there. @param discPx across a disc of the largest bulb, px */
export function drawCell(cell: Cell, entry: AtlasFigures, shows: MapShows, discPx: number, pen: Pen): void {
  const { type, goodShare, startDay, neckFallDay, bulbDiameterMm } = entry;
  const day = shows === 'start' ? startDay : shows === 'tops' ? neckFallDay : null;
  if (isBareGround(entry)) drawBare(cell, pen);
  else if (shows === 'kind') drawRows(cell, type, slopeOf[type], goodShare, pen);
  else if (shows === 'good') drawRows(cell, 'good', 90, goodShare, pen);
  else if (day !== null) handAt(cell, partOfYear(day), pen);
  else if (shows === 'size' && bulbDiameterMm !== null) drawBulb(cell, bulbDiameterMm, discPx, pen);
  else drawBare(cell, pen);
}

function drawBare({ x, y, width, height }: Cell, pen: Pen): void {
  pen.disc('bare', x, y, Math.min(1.6, Math.min(width, height) * 0.16));
}

/** How many rows a cell has room for, at most ten. */
function rowsOf({ width, height }: Pick<Cell, 'width' | 'height'>): number {
  return Math.max(1, Math.min(mostRows, Math.floor((Math.min(width, height) * planted) / rowPx)));
}

/** How thick rows are drawn, px, where cells are so large. */
export function rowWidth(cell: Pick<Cell, 'width' | 'height'>): number {
  const apart = (Math.min(cell.width, cell.height) * planted) / rowsOf(cell);
  return Math.min(2.4, Math.max(0.5, apart * 0.45));
}

/** Rows across a cell: as many of them as good years in ten, or as the cell's turn has it where it is small. */
export function drawRows(cell: Cell, look: MarkLook, slopeDeg: number, share: number, pen: Pen): void {
  const rows = rowsOf(cell);
  const drawn = rows === mostRows ? Math.round(share * rows) : Math.floor(share * rows + cell.turn);
  const [halfX, halfY] = [(cell.width * planted) / 2, (cell.height * planted) / 2];
  const angle = (slopeDeg * Math.PI) / 180;
  // along a row, and across to the next; y runs down
  const [dx, dy] = [Math.cos(angle), -Math.sin(angle)];
  const [nx, ny] = [Math.sin(angle), Math.cos(angle)];
  // the corners of a field have room for short rows only
  const reach = (halfX * Math.abs(nx) + halfY * Math.abs(ny)) * (slopeDeg % 90 === 0 ? 1 : 0.8);
  for (let row = 0; row < drawn; row++) {
    const off = reach * ((2 * row + 1) / rows - 1);
    const [x, y] = [off * nx, off * ny];
    const [from, to] = within(x, y, dx, dy, halfX, halfY);
    if (to <= from) continue;
    pen.line(
      look,
      [cell.x + x + dx * from, cell.y + y + dy * from],
      [cell.x + x + dx * to, cell.y + y + dy * to],
    );
  }
}

/** Where a line runs within a box about the middle. */
function within(
  x: number,
  y: number,
  dx: number,
  dy: number,
  halfX: number,
  halfY: number,
): [number, number] {
  let [from, to] = [Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY];
  for (const [at, way, half] of [
    [x, dx, halfX],
    [y, dy, halfY],
  ]) {
    if (Math.abs(way) < 1e-9) continue;
    const ends = [(-half - at) / way, (half - at) / way];
    from = Math.max(from, Math.min(...ends));
    to = Math.min(to, Math.max(...ends));
  }
  return [from, to];
}

/** Part of the year gone by, 0…1. */
function partOfYear(day: DayNumber): number {
  return (dayOfYear(day) - 1) / daysInYear(civilDate(day).year);
}

/** A hand that points round the year as on a clock, January up. @param part of the year gone by, 0…1 */
export function handAt(cell: Cell, part: number, pen: Pen): void {
  const quarter = `quarter-${(Math.floor(part * 4) + 1) as 1 | 2 | 3 | 4}` as const;
  pen.area(`tint-${quarter}`, cell.corners);
  const long = Math.min(cell.width, cell.height) * 0.44;
  pen.area(quarter, handCorners(cell.x, cell.y, part, long));
}

/** Broad at its tail, sharp where it points. */
function handCorners(x: number, y: number, part: number, long: number): Point[] {
  const angle = part * 2 * Math.PI;
  const [dx, dy] = [Math.sin(angle) * long, -Math.cos(angle) * long];
  const broad = 0.3;
  return [
    [x + dx, y + dy],
    [x - dx * 0.8 + dy * broad, y - dy * 0.8 - dx * broad],
    [x - dx * 0.8 - dy * broad, y - dy * 0.8 + dx * broad],
  ];
}

export function drawBulb({ x, y }: Cell, diameterMm: number, discPx: number, pen: Pen): void {
  pen.disc('disc', x, y, (discPx / 2) * Math.min(1, diameterMm / largestMm));
}
