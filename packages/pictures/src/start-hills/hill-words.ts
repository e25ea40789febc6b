import type { DayAxis } from '../drawing/day-axis.ts';
import type { Point } from '../drawing/path.ts';
import { type as font } from '../drawing/picture.tsx';
import { boldWidth, textWidth } from '../drawing/text-fit.ts';
import type { Trouble } from './start-hills-props.ts';

export type PlacedWord = { text: string; x: number; y: number };
export type KeyEntry = { trouble: Trouble | 'barred'; text: string; x: number; y: number };
type Slope = { upper: readonly Point[]; lower: readonly Point[] };
type Spot = { x: number; y: number; score: number; wide: number };

const leastHill = 26;
const leastHollow = 15;
const lineHeight = 19;
const swatch = 16;
/** A word may stand out of its hollow by this share of its width. */
const standsOut = 0.4;
/** The same word again only this share of the axis away. */
const apart = 0.35;

/**
 * Words written into hill and hollows where they are broad and deep, the biggest first, none over another; what finds
 * no room there is named in a key.
 */
export function placeWords(
  axis: DayAxis,
  hill: { text: string } & Slope,
  hollows: readonly ({ trouble: Trouble; text: string } & Slope)[],
): { words: PlacedWord[]; unnamed: Trouble[] } {
  const words: PlacedWord[] = [];
  const put = (text: string, spot: Spot): boolean => {
    const half = wordWidth(text) / 2 + 3;
    if (spot.wide < 2 * half * (1 - standsOut)) return false;
    const word = { text, x: Math.min(axis.right - half, Math.max(axis.left + half, spot.x)), y: spot.y + 5 };
    const far = apart * (axis.right - axis.left);
    const isTaken = (other: PlacedWord) =>
      overlap(word, other) || (other.text === text && Math.abs(other.x - word.x) < far);
    if (words.some(isTaken)) return false;
    words.push(word);
    return true;
  };
  const peak = spotsIn(hill, leastHill)[0];
  if (peak) put(hill.text, peak);
  const named = new Set<Trouble>();
  hollows
    .flatMap((hollow) => spotsIn(hollow, leastHollow).map((spot) => ({ ...hollow, spot })))
    .sort((a, b) => b.spot.score - a.spot.score)
    .forEach(({ trouble, text, spot }) => {
      if (put(text, spot)) named.add(trouble);
    });
  return { words, unnamed: hollows.map(({ trouble }) => trouble).filter((trouble) => !named.has(trouble)) };
}

/** Entries of a key, in lines between the ends of an axis; y counts from its first line. */
export function placeKey(
  axis: DayAxis,
  entries: readonly Pick<KeyEntry, 'trouble' | 'text'>[],
): { key: KeyEntry[]; height: number } {
  let x = axis.left;
  let line = 0;
  const key = entries.map(({ trouble, text }): KeyEntry => {
    const wide = swatch + 6 + textWidth(text, font.small) + 16;
    if (x > axis.left && x + wide > axis.right) {
      x = axis.left;
      line++;
    }
    const entry = { trouble, text, x, y: line * lineHeight };
    x += wide;
    return entry;
  });
  return { key, height: key.length > 0 ? (line + 1) * lineHeight : 0 };
}

/** The best place of each stretch that is deep enough, the biggest stretch first. */
function spotsIn({ upper, lower }: Slope, least: number): Spot[] {
  const depth = (i: number) => lower[i][1] - upper[i][1];
  const spots: Spot[] = [];
  for (let first = 0; first < upper.length; first++) {
    if (depth(first) < least) continue;
    let last = first;
    while (last + 1 < upper.length && depth(last + 1) >= least) last++;
    let best = { x: 0, y: 0, score: -1 };
    for (let i = first; i <= last; i++) {
      // the middle of a broad stretch rather than its deepest week
      let score = 0;
      for (let near = Math.max(first, i - 4); near <= Math.min(last, i + 4); near++) score += depth(near);
      if (score > best.score) best = { x: upper[i][0], y: (upper[i][1] + lower[i][1]) / 2, score };
    }
    spots.push({ ...best, wide: upper[last][0] - upper[first][0] });
    first = last;
  }
  return spots.sort((a, b) => b.score - a.score);
}

function wordWidth(text: string): number {
  return textWidth(text, font.text * boldWidth);
}

function overlap(a: PlacedWord, b: PlacedWord): boolean {
  const wide = (wordWidth(a.text) + wordWidth(b.text)) / 2 + 4;
  return Math.abs(a.x - b.x) < wide && Math.abs(a.y - b.y) < lineHeight;
}
