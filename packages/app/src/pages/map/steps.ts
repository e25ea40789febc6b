import type { Region } from '@neckfall/engine';
import { cellOf, type MapFrame, pxPerRem } from '@neckfall/pictures';

/** From the coarsest grid to the finest, degrees: each has the points of the one before. */
const allSteps = [16, 8, 4, 2, 1, 0.5] as const;
/** A grid is worked out as long as it has no more points, sea and all. */
const mostPoints = 50_000;
const mostFine = 1200;
/** A field is drawn as small as this, dots of the screen. */
const leastDots = 2.6;

/** The grids to work out for a region. */
export function stepsFor({ southDeg, northDeg, westDeg, eastDeg }: Region): number[] {
  const wide = eastDeg < westDeg ? eastDeg + 360 - westDeg : eastDeg - westDeg;
  return allSteps.filter(
    (step) => ((northDeg - southDeg) / step) * (wide / step) <= (step < 1 ? mostFine : mostPoints),
  );
}

/** The finest of some grids whose fields can be seen. @param scale dots of the screen to a px of the frame */
export function drawnStep(steps: readonly number[], frame: MapFrame, scale: number): number {
  const middle = { latitudeDeg: (frame.south + frame.north) / 2, longitudeDeg: frame.meridianDeg };
  const seen = steps.filter((step) => {
    const cell = cellOf(middle, step, frame);
    return cell !== null && Math.min(cell.width, cell.height) * scale >= leastDots;
  });
  return seen.at(-1) ?? steps[0];
}

/** Dots of the screen to a px of a picture, whatever the reader's text size. */
export function dotsPerPx(): number {
  const rem = Number.parseFloat(getComputedStyle(document.documentElement).fontSize);
  return (devicePixelRatio * rem) / pxPerRem;
}
