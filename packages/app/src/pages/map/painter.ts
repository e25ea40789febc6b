import { type GridPoint, gridPoints } from '@neckfall/engine';
import {
  cellOf,
  discPxOf,
  drawCell,
  type InkColours,
  inkings,
  landShapes,
  type MapFrame,
  type MapPoint,
  type MapShows,
  type MarkLook,
  rowWidthOf,
} from '@neckfall/pictures';
import { nextTurn } from '../../turns/next-turn.ts';
import { canvasPen } from './canvas-pen.ts';

/** What is painted of each point. */
export type Painted = {
  shows: MapShows;
  leadAt: (point: GridPoint) => MapPoint | null;
  colours: InkColours;
};

export type Painter = {
  /** Paints all anew from points of one step, which take the place of what stands once all are there. */
  all: (stepDeg: number, painted: Painted, done?: () => void) => void;
  /** Paints points over what stands, as fields of a step. */
  over: (points: Iterable<GridPoint>, stepDeg: number, painted: Painted) => void;
  stop: () => void;
};

/** A turn takes no longer, ms: fingers get in between, on a slow phone too. */
const turnMs = 6;

/** Paints a map on a canvas a little at a time. `scale`: dots of the canvas to a px of the frame. */
export function openPainter(
  canvas: HTMLCanvasElement,
  frame: MapFrame,
  outline: readonly Float32Array[],
  scale: number,
): Painter {
  const [width, height] = [Math.round(frame.width * scale), Math.round(frame.height * scale)];
  canvas.width = width;
  canvas.height = height;
  const front = canvas.getContext('2d')!;
  const behind = document.createElement('canvas');
  let land: { fields: Path2D; coasts: Path2D } | null = null;
  let works: Generator<unknown>[] = [];
  let stopTurn = () => {};
  let isTurning = false;

  function begin(work: Generator<unknown>, isAll: boolean): void {
    if (isAll) works = [];
    works.push(work);
    if (!isTurning) turn();
  }

  function turn(): void {
    isTurning = true;
    stopTurn = nextTurn(() => {
      const end = performance.now() + turnMs;
      while (works.length > 0 && performance.now() < end) if (works[0].next().done) works.shift();
      if (works.length > 0) turn();
      else isTurning = false;
    });
  }

  function* landPath(): Generator<unknown, NonNullable<typeof land>> {
    if (land) return land;
    const path = { fields: new Path2D(), coasts: new Path2D() };
    for (const shape of landShapes(outline, frame)) {
      addLine(path.fields, shape.corners, true);
      for (const coast of shape.coasts) addLine(path.coasts, coast, false);
      yield;
    }
    land = path;
    return path;
  }

  function* paintAll(stepDeg: number, painted: Painted, done: () => void): Generator<unknown> {
    const path = yield* landPath();
    const { colours } = painted;
    behind.width = width;
    behind.height = height;
    const context = behind.getContext('2d')!;
    context.setTransform(scale, 0, 0, scale, 0, 0);
    context.strokeStyle = colours.line;
    context.lineWidth = 0.8;
    context.stroke(path.coasts);
    yield;
    context.fillStyle = colours['paper-2'];
    context.fill(path.fields);
    yield;
    yield* paintPoints(context, gridPoints(frame.region, stepDeg), stepDeg, painted, false);
    front.setTransform(1, 0, 0, 1, 0, 0);
    front.clearRect(0, 0, width, height);
    front.globalCompositeOperation = 'source-over';
    front.drawImage(behind, 0, 0);
    done();
  }

  function* paintPoints(
    context: CanvasRenderingContext2D,
    points: Iterable<GridPoint>,
    stepDeg: number,
    { shows, leadAt, colours }: Painted,
    isOver: boolean,
  ): Generator<unknown> {
    const rows = rowWidthOf(stepDeg, frame);
    const discPx = discPxOf(stepDeg, frame);
    let pen = canvasPen();
    let count = 0;
    const put = () => {
      context.setTransform(scale, 0, 0, scale, 0, 0);
      // only where land is already painted
      context.globalCompositeOperation = 'source-atop';
      if (isOver) inkPath(context, pen.ground, 'fill', colours['paper-2'], 1, 0);
      for (const look of Object.keys(inkings) as MarkLook[]) {
        const path = pen.paths.get(look);
        const { colour, way, opacity } = inkings[look];
        if (path) inkPath(context, path, way, colours[propertyOf(colour)], opacity, rows);
      }
      pen = canvasPen();
    };
    for (const point of points) {
      const lead = leadAt(point);
      const cell = lead && cellOf(point, stepDeg, frame);
      if (!cell) {
        if (++count % 64 === 0) yield;
        continue;
      }
      if (isOver) pen.clear(cell.corners);
      drawCell(cell, lead.entry, shows, discPx, pen);
      if (++count % 32 === 0) {
        put();
        yield;
      }
    }
    put();
  }

  return {
    all: (stepDeg, painted, done = () => {}) => begin(paintAll(stepDeg, painted, done), true),
    over: (points, stepDeg, painted) => begin(paintPoints(front, points, stepDeg, painted, true), false),
    stop() {
      works = [];
      isTurning = false;
      stopTurn();
    },
  };
}

/** `paper2` stands as `--paper-2`. */
const propertyOf = (name: string) => name.replace(/\d/, '-$&');

function inkPath(
  context: CanvasRenderingContext2D,
  path: Path2D,
  way: 'fill' | 'stroke',
  colour: string,
  opacity: number,
  lineWidth: number,
): void {
  context.globalAlpha = opacity;
  if (way === 'fill') {
    context.fillStyle = colour;
    context.fill(path);
  } else {
    context.strokeStyle = colour;
    context.lineWidth = lineWidth;
    context.stroke(path);
  }
  context.globalAlpha = 1;
}

function addLine(path: Path2D, line: readonly number[], isClosed: boolean): void {
  path.moveTo(line[0], line[1]);
  for (let i = 2; i < line.length; i += 2) path.lineTo(line[i], line[i + 1]);
  if (isClosed) path.closePath();
}
