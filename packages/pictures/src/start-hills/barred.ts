import { type DayAxis, xOfDay } from '../drawing/day-axis.ts';
import { type as font } from '../drawing/picture.tsx';
import { textWidth, wrapText } from '../drawing/text-fit.ts';
import type { HillStart } from './start-hills-props.ts';

/** A stretch of the year in which nobody starts, px, and why; `lines`: its words, which the widest of a reason has alone. */
export type Barred = { from: number; to: number; text: string; lines: readonly string[] | null };

const halfWeek = 3.5;
const sideRoom = 8;
const mostLines = 4;

/** Stretches of starts that one thing bars; what finds no room in its widest is left to the key. @param starts closed at both ends of the axis */
export function barredStretches(starts: readonly HillStart[], axis: DayAxis): Barred[] {
  const x = (day: number) => Math.max(axis.left, Math.min(axis.right, xOfDay(axis, day)));
  const stretches: Barred[] = [];
  for (let first = 0; first < starts.length; first++) {
    const text = starts[first].barredBy;
    if (text === null) continue;
    let last = first;
    while (starts[last + 1]?.barredBy === text) last++;
    const [from, to] = [x(starts[first].day - halfWeek), x(starts[last].day + halfWeek)];
    stretches.push({ from, to, text, lines: null });
    first = last;
  }
  const wide = ({ from, to }: Barred) => to - from;
  return stretches.map((stretch) => {
    const { text } = stretch;
    const isWidest = stretches.every((other) => other.text !== text || wide(other) <= wide(stretch));
    return isWidest ? { ...stretch, lines: linesIn(text, wide(stretch) - sideRoom) } : stretch;
  });
}

function linesIn(text: string, room: number): readonly string[] | null {
  if (text.split(' ').some((word) => textWidth(word, font.small) > room)) return null;
  const lines = wrapText(text, room, font.small);
  return lines.length > mostLines ? null : lines;
}
