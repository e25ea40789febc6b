import { type DayAxis, xOfDay } from '../drawing/day-axis.ts';
import { type as font, lineHeight } from '../drawing/picture.tsx';
import { textWidth, wrapText } from '../drawing/text-fit.ts';
import type { CropMark } from './year-line-props.ts';

/** A mark with its dot and its words, px; y counts from the first row. */
export type PlacedMark = {
  mark: CropMark;
  x: number;
  dotY: number;
  anchor: 'start' | 'end' | 'middle';
  textX: number;
  /** Its words, mostly one line of them; `textY` is the first line's. */
  lines: readonly string[];
  textY: number;
  small: boolean;
};

const gap = 8;
const row = 22;
const narrow = 480;

/**
 * Marks in order of their days, each with a row of its own under the picture. Words go to the left of the dot where
 * they fit, since the plumb lines still to come are at the right; else to its right; else under it.
 */
export function placeMarks(
  marks: readonly CropMark[],
  axis: DayAxis,
): { placed: PlacedMark[]; height: number } {
  const small = axis.right - axis.left < narrow;
  let y = 0;
  const placed = marks
    .toSorted((a, b) => a.day - b.day)
    .map((mark): PlacedMark => {
      const { day, text, span } = mark;
      const x = xOfDay(axis, day);
      const size = small ? font.small : font.text;
      const lines = wrapText(text, axis.right - axis.left, size);
      const width = Math.max(...lines.map((line) => textWidth(line, size)));
      const left = Math.min(x, span ? xOfDay(axis, span.from) - 2 : x) - gap;
      const right = Math.max(x, span ? xOfDay(axis, span.to + 1) + 2 : x) + gap;
      const dotY = y;
      y += row;
      if (left - width >= axis.left)
        return { mark, x, dotY, anchor: 'end', textX: left, lines, textY: dotY + 5, small };
      if (right + width <= axis.right)
        return { mark, x, dotY, anchor: 'start', textX: right, lines, textY: dotY + 5, small };
      y += row - 6 + (lines.length - 1) * lineHeight;
      const middle = Math.min(axis.right - width / 2, Math.max(axis.left + width / 2, x));
      return { mark, x, dotY, anchor: 'middle', textX: middle, lines, textY: dotY + 19, small };
    });
  return { placed, height: y };
}
