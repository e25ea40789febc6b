import { type DayAxis, dayAtX, dayAxis, xOfDay } from '../day-axis.ts';
import type { Point } from '../path.ts';
import { type HillStart, type StartHillsProps, type Trouble, troubles } from './start-hills-props.ts';

export const hillHeight = 96;

/** Where things of the hills stand, px. */
export type HillsLayout = {
  axis: DayAxis;
  top: number;
  ground: number;
  bottom: number;
  sizeTop: number;
  sizeBottom: number;
  leavesTop: number;
  leavesBottom: number;
  monthsY: number;
  height: number;
  hill: Point[];
  hollows: { trouble: Trouble; upper: Point[]; lower: Point[] }[];
};

export function hillsLayout(
  props: Pick<StartHillsProps, 'width' | 'firstDay' | 'days' | 'starts'>,
): HillsLayout {
  const { width, firstDay, days } = props;
  const axis = dayAxis(firstDay, days, width);
  const starts = closedYear(props.starts, firstDay, days);
  const top = 46;
  const ground = top + hillHeight;
  const bottom = ground + hillHeight;
  const sizeTop = bottom + 30;
  const sizeBottom = sizeTop + 50;
  const leavesTop = sizeBottom + 30;
  const leavesBottom = leavesTop + 36;
  const x = (start: HillStart) => xOfDay(axis, start.day);
  const filled = starts.map(() => 0);
  const hollows = troubles.flatMap((trouble) => {
    if (starts.every(({ shares }) => shares[trouble] === 0)) return [];
    const upper = starts.map((start, i): Point => [x(start), ground + filled[i] * hillHeight]);
    starts.forEach(({ shares }, i) => {
      filled[i] = Math.min(1, filled[i] + shares[trouble]);
    });
    const lower = starts.map((start, i): Point => [x(start), ground + filled[i] * hillHeight]);
    return [{ trouble, upper, lower }];
  });
  return {
    axis,
    top,
    ground,
    bottom,
    sizeTop,
    sizeBottom,
    leavesTop,
    leavesBottom,
    monthsY: leavesBottom + 20,
    height: leavesBottom + 28,
    hill: starts.map((start): Point => [x(start), ground - start.shares.good * hillHeight]),
    hollows,
  };
}

/** The starts with the year closed at both ends: the last stands before the first and the first after the last. */
export function closedYear(starts: readonly HillStart[], firstDay: number, days: number): HillStart[] {
  if (starts.length < 2) return [...starts];
  const first = starts[0];
  const last = starts[starts.length - 1];
  const gap = first.day - (last.day - days);
  const between = (day: number): HillStart => {
    const near = (day - (last.day - days)) / gap < 0.5 ? last : first;
    return { ...near, day };
  };
  const closed = [...starts];
  if (first.day > firstDay) closed.unshift(between(firstDay));
  if (last.day < firstDay + days) closed.push({ ...closed[0], day: firstDay + days });
  return closed;
}

/** Day under a pointer, from x in px of the picture's own width; for dragging the marker. */
export function hillsDayAt(props: Pick<StartHillsProps, 'width' | 'firstDay' | 'days'>, x: number): number {
  return dayAtX(dayAxis(props.firstDay, props.days, props.width), x);
}

/** x of a day in px of the picture's own width. */
export function hillsXOf(props: Pick<StartHillsProps, 'width' | 'firstDay' | 'days'>, day: number): number {
  return xOfDay(dayAxis(props.firstDay, props.days, props.width), day + 0.5);
}

/** Where a hollow is deepest: there its word stands. Null where it is too shallow for one. */
export function deepest(
  upper: readonly Point[],
  lower: readonly Point[],
  least: number,
): { x: number; y: number; depth: number } | null {
  let best = -1;
  let bestScore = 0;
  for (let i = 0; i < upper.length; i++) {
    // the middle of a broad hollow rather than its first week
    let score = 0;
    for (let near = Math.max(0, i - 4); near <= Math.min(upper.length - 1, i + 4); near++) {
      score += lower[near][1] - upper[near][1];
    }
    if (score > bestScore) {
      best = i;
      bestScore = score;
    }
  }
  if (best < 0) return null;
  const depth = lower[best][1] - upper[best][1];
  return depth < least ? null : { x: upper[best][0], y: (lower[best][1] + upper[best][1]) / 2, depth };
}

export function yOnScale(value: number, low: number, high: number, top: number, bottom: number): number {
  return bottom - ((value - low) / Math.max(1e-9, high - low)) * (bottom - top);
}
