import { type Point, px } from './path.ts';

/** Rain one stroke stands for, mm; the same in every picture, so that two places can be compared. */
export const mmPerStroke = 5;

const strokePx = 9;
const slant = -2.2;
/** Heights tried for a stroke where words stand in its way. */
const tries = 12;
/** Golden ratio: heights that never line up, without chance. */
const golden = 0.618_033_988_749_895;

/**
 * Rain as one path of fine strokes: each falls on the day on which another 5 mm have come down.
 * @param xOf x of a day by its index, px
 * @param fall lowest y a stroke of that day reaches, px
 * @param isFree whether a rectangle is free of words: a stroke that would cross some falls higher or lower
 */
export function rainStrokes(
  rainMm: readonly number[],
  xOf: (index: number) => number,
  top: number,
  fall: (index: number) => number,
  isFree: (left: number, top: number, right: number, bottom: number) => boolean = () => true,
): string {
  let path = '';
  let come = mmPerStroke / 2;
  let stroke = 0;
  for (let i = 0; i < rainMm.length; i++) {
    const before = come;
    come += rainMm[i];
    while (come >= mmPerStroke) {
      come -= mmPerStroke;
      stroke++;
      const part = rainMm[i] > 0 ? Math.min(1, Math.max(0, (mmPerStroke - before) / rainMm[i])) : 0;
      const x = xOf(i) + part * (xOf(i + 1) - xOf(i));
      const room = Math.max(0, fall(i) - top - strokePx);
      const heights = Array.from({ length: tries }, (_, n) => top + room * (((stroke + n) * golden) % 1));
      const y = heights.find((at) => isFree(x + slant / 2, at, x - slant / 2, at + strokePx)) ?? null;
      // all its way is words
      if (y === null) continue;
      const from: Point = [x - slant / 2, y];
      const to: Point = [x + slant / 2, y + strokePx];
      path += `M${px(from[0])} ${px(from[1])}L${px(to[0])} ${px(to[1])}`;
    }
  }
  return path;
}
