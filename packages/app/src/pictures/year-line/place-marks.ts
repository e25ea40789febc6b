import { textWidth } from '../text-fit.ts';

export type PlacedMark = { x: number; row: number; anchor: 'start' | 'end'; textX: number };

const gap = 7;

/**
 * Marks in order of their days, each with a row of its own under the picture: text goes to the left of its plumb line
 * where it fits, since the lines to come are at the right.
 */
export function placeMarks(
  marks: readonly { x: number; text: string }[],
  left: number,
  right: number,
  fontSize: number,
): PlacedMark[] {
  return marks.map(({ x, text }, row) => {
    const width = textWidth(text, fontSize) + gap;
    const roomLeft = x - left;
    const roomRight = right - x;
    const toRight = width > roomLeft && roomRight > roomLeft;
    if (toRight)
      return { x, row, anchor: 'start', textX: Math.max(left, Math.min(x + gap, right - width + gap)) };
    return { x, row, anchor: 'end', textX: Math.min(right, Math.max(x - gap, left + width - gap)) };
  });
}
