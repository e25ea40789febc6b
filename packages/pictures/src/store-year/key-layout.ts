import { type as font, lineHeight } from '../drawing/picture.tsx';
import { textWidth, wrapText } from '../drawing/text-fit.ts';
import type { StoreYearProps } from './store-year-props.ts';

type KeySign = { of: 'lot'; lot: number } | { of: 'eaten' | 'lost' | 'need' | 'span' | 'week' };
export type KeyItem = { sign: KeySign; lines: readonly string[]; x: number; y: number };
export type KeyLayout = { items: readonly KeyItem[]; foot: number };

/** Room of a sign before its words, and between two of them, px. */
export const signWidth = 24;
const gap = 14;
const pad = 4;

/** What the signs of the picture mean, in rows that are as full as they go. */
export function keyLayout({ width, lots, words }: StoreYearProps, top: number): KeyLayout {
  const told: { sign: KeySign; text: string }[] = [
    ...lots.map((text, lot) => ({ sign: { of: 'lot' as const, lot }, text })),
    ...(['week', 'eaten', 'lost', 'need', 'span'] as const).map((of) => ({
      sign: { of },
      text: words[of],
    })),
  ];
  const items: KeyItem[] = [];
  let x = pad;
  let y = top + font.small;
  let rowLines = 1;
  for (const { sign, text } of told) {
    const indent = sign.of === 'week' ? 0 : signWidth;
    const lines = wrapText(text, width - 2 * pad - indent, font.small);
    const wide = indent + Math.max(...lines.map((line) => textWidth(line, font.small)));
    if (x > pad && x + wide > width - pad) {
      x = pad;
      y += rowLines * lineHeight + 5;
      rowLines = 1;
    }
    items.push({ sign, lines, x, y });
    rowLines = Math.max(rowLines, lines.length);
    x += wide + gap;
  }
  return { items, foot: y + (rowLines - 1) * lineHeight + 8 };
}
