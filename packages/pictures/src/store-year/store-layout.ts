import { type as font, lineHeight } from '../drawing/picture.tsx';
import { isApart, standingAt, type WordsBox, wordsBox } from '../drawing/words-box.ts';
import type { StoreMonth, StoreYearProps } from './store-year-props.ts';

/** Bulbs side by side on a string. */
const abreast = 4;
const pad = 4;
const pegHeight = 9;
/** From one row of bulbs to the next, in bulbs: they nestle. */
const nestle = 0.94;
const mostBulb = 15;
/** From here on all twelve pegs stand on one rail, px. */
const oneRailWidth = 560;

/** Where a bulb hangs, px. */
export type Spot = { x: number; y: number };

type MonthString = {
  x: number;
  name: string;
  /** Of each lot. */
  kept: readonly Spot[][];
  lost: readonly Spot[];
  eaten: readonly Spot[];
  /** Feet of the string, and of what is in store in a poor and in a good year. */
  foot: number;
  span: readonly [number, number] | null;
};

type GapSign = { left: number; right: number; words: WordsBox | null };

export type Rail = {
  nameY: number;
  y: number;
  strings: readonly MonthString[];
  gaps: readonly GapSign[];
  needY: number;
  foot: number;
};

export type StoreLayout = { bulb: number; left: number; right: number; rails: readonly Rail[]; foot: number };

/** Strings of onions on pegs, one a month: what is left hangs at the top, under it what was lost and eaten in the month. */
export function storeLayout({ width, months, gaps, need }: StoreYearProps): StoreLayout {
  const perRail = width >= oneRailWidth ? 12 : 6;
  const [left, right] = [pad, width - pad];
  const column = (right - left) / perRail;
  const bulb = Math.min(mostBulb, (column - 10) / abreast);
  const rails: Rail[] = [];
  let top = 0;
  for (let first = 0; first < months.length; first += perRail) {
    const nameY = top + font.small + 2;
    const y = nameY + 8;
    const hang = y + pegHeight;
    const strings = months
      .slice(first, first + perRail)
      .map((month, at) => stringOf(month, left + (at + 0.5) * column, hang, bulb));
    const xOf = (month: number) => left + (month - first) * column;
    const inRail = gaps
      .map(({ from, to, text }) => ({
        left: Math.max(left, xOf(from)),
        right: Math.min(right, xOf(to)),
        // a gap that goes on to the other rail is named on the one that has more of it
        text: isMostlyOn(first, perRail, from, to) ? text : null,
      }))
      .filter((gap) => gap.right - gap.left > 0.5);
    const needY = hang + drop(need, bulb);
    const signs: GapSign[] = [];
    for (const gap of inRail) signs.push(signOf(gap, strings, column, [left, right], needY, signs));
    const foot = Math.max(
      needY,
      ...strings.map((string) => Math.max(string.foot, string.span?.[1] ?? 0)),
      ...signs.map(({ words }) => (words ? words.y + (words.lines.length - 1) * lineHeight + 2 : 0)),
    );
    rails.push({ nameY, y, strings, gaps: signs, needY, foot });
    top = foot + 12;
  }
  return { bulb, left, right, rails, foot: top };
}

function isMostlyOn(first: number, perRail: number, from: number, to: number): boolean {
  const here = Math.min(to, first + perRail) - Math.max(from, first);
  return here >= (to - from) / 2;
}

function stringOf(
  { name, kept, eaten, lost, span }: StoreMonth,
  x: number,
  hang: number,
  bulb: number,
): MonthString {
  let count = 0;
  const hung = (bulbs: number): Spot[] =>
    Array.from({ length: Math.round(bulbs) }, () => spotOf(count++, x, hang, bulb));
  // the longest keepers hang highest: a string is eaten from its foot
  const spots = kept.map((): Spot[] => []);
  for (let lot = kept.length - 1; lot >= 0; lot--) spots[lot] = hung(kept[lot]);
  const [lostSpots, eatenSpots] = [hung(lost), hung(eaten)];
  return {
    x,
    name,
    kept: spots,
    lost: lostSpots,
    eaten: eatenSpots,
    foot: hang + drop(Math.ceil(count / abreast) * abreast, bulb),
    span: span[1] >= 0.5 ? [hang + drop(span[0], bulb), hang + drop(span[1], bulb)] : null,
  };
}

function spotOf(at: number, x: number, hang: number, bulb: number): Spot {
  const row = Math.floor(at / abreast);
  const across = (at % abreast) - (abreast - 1) / 2;
  return {
    x: x + (across + (row % 2 === 0 ? -0.12 : 0.12)) * bulb,
    y: hang + (row + 0.55) * bulb * nestle,
  };
}

/** How far so many bulbs reach down. */
function drop(bulbs: number, bulb: number): number {
  return (bulbs / abreast) * bulb * nestle;
}

/** Words of a gap under all that hangs where they stand. */
function signOf(
  gap: { left: number; right: number; text: string | null },
  strings: readonly MonthString[],
  column: number,
  [left, right]: readonly [number, number],
  least: number,
  before: readonly GapSign[],
): GapSign {
  if (gap.text === null) return { left: gap.left, right: gap.right, words: null };
  const x = (gap.left + gap.right) / 2;
  const half = Math.max(gap.right - gap.left, 2.4 * column) / 2;
  const words = wordsBox({
    text: gap.text,
    x,
    left: Math.max(left, Math.min(x - half, right - 2 * half)),
    right: Math.min(right, Math.max(x + half, left + 2 * half)),
  });
  const under = strings.filter((string) => Math.abs(string.x - words.x) < words.half + column / 2);
  const y = Math.max(least, ...under.map(({ foot, span }) => Math.max(foot, span?.[1] ?? 0)));
  let placed = standingAt(words, y + font.small + 3);
  // under the words of a gap that is near
  for (const { words: other } of before)
    if (other && !isApart(placed, other))
      placed = standingAt(words, other.y + other.lines.length * lineHeight + 3);
  return { left: gap.left, right: gap.right, words: placed };
}
