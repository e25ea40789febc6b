import { type as font, lineHeight } from './picture.tsx';
import { boldWidth, textWidth, wrapText } from './text-fit.ts';

/** Words within a picture: lines about a middle, the first with its feet at `y`, px. */
export type WordsBox = { lines: readonly string[]; x: number; y: number; half: number; bold: boolean };

type Asked = { text: string; x: number; left: number; right: number; bold?: boolean };

/** Words near `x`, kept between two sides and broken where they are wider; where they stand is up to the caller. */
export function wordsBox({ text, x, left, right, bold = false }: Asked): WordsBox {
  const size = bold ? font.text * boldWidth : font.small;
  const lines = wrapText(text, right - left - 4, size);
  const half = Math.max(...lines.map((line) => textWidth(line, size))) / 2 + 2;
  return { lines, x: Math.max(left + half, Math.min(right - half, x)), y: 0, half, bold };
}

/** The same words with the feet of their first, or of their last line at `y`. */
export function standingAt(words: WordsBox, y: number, line: 'first' | 'last' = 'first'): WordsBox {
  return { ...words, y: line === 'first' ? y : y - (words.lines.length - 1) * lineHeight };
}

/** Whether a rectangle of the picture lies clear of words. */
export function isClear(words: WordsBox, left: number, top: number, right: number, bottom: number): boolean {
  const { x, y, half, lines } = words;
  const [head, foot] = [y - font.small, y + (lines.length - 1) * lineHeight + 4];
  return right <= x - half || left >= x + half || bottom <= head || top >= foot;
}

export function isApart(a: WordsBox, b: WordsBox): boolean {
  const { x, y, half, lines } = b;
  return isClear(a, x - half, y - font.small, x + half, y + (lines.length - 1) * lineHeight + 4);
}
