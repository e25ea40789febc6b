import { type DayAxis, xOfDay } from '../drawing/day-axis.ts';
import { type as font } from '../drawing/picture.tsx';
import { boldWidth, textWidth } from '../drawing/text-fit.ts';
import type { WorkMark } from './year-line-props.ts';

/** Pegs that stand too near each other for a number each, with the numbers that stand under them all, px. */
export type PlacedWork = { pegs: readonly number[]; text: string; x: number; half: number };

const apart = 7;

/** Work on one row, each piece at its day under its number: "3", or "4–6" where days are near. */
export function placeWork(work: readonly WorkMark[], axis: DayAxis): PlacedWork[] {
  const inYear = work.filter(({ day }) => day >= axis.firstDay && day < axis.firstDay + axis.days);
  let placed = inYear
    .toSorted((a, b) => a.day - b.day || a.number - b.number)
    .map(({ day, number }) => ({ pegs: [xOfDay(axis, day + 0.5)], first: number, last: number }));
  for (;;) {
    const boxes = placed.map((group) => boxOf(group, axis));
    const near = boxes.findIndex((box, at) => at > 0 && box.x - box.half < rightOf(boxes[at - 1]) + apart);
    if (near < 0) return boxes;
    const [before, after] = placed.slice(near - 1, near + 1);
    const joined = {
      pegs: [...before.pegs, ...after.pegs],
      first: Math.min(before.first, after.first),
      last: Math.max(before.last, after.last),
    };
    placed = [...placed.slice(0, near - 1), joined, ...placed.slice(near + 1)];
  }
}

function boxOf(
  { pegs, first, last }: { pegs: number[]; first: number; last: number },
  { left, right }: DayAxis,
): PlacedWork {
  const text = first === last ? `${first}` : `${first}–${last}`;
  const half = textWidth(text, font.small * boldWidth) / 2 + 1;
  const middle = (pegs[0] + pegs[pegs.length - 1]) / 2;
  return { pegs, text, x: Math.max(left + half, Math.min(right - half, middle)), half };
}

const rightOf = ({ x, half }: PlacedWork) => x + half;
