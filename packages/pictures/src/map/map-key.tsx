import { onionTypes } from '@neckfall/engine';
import { ink } from '../drawing/ink.ts';
import { px } from '../drawing/path.ts';
import { type as font, Label, lineHeight, Picture } from '../drawing/picture.tsx';
import { textWidth, wrapText } from '../drawing/text-fit.ts';
import type { Cell } from './cell.ts';
import { drawBulb, drawRows, handAt, type Pen, slopeOf } from './map-marks.ts';
import type { MapShows } from './map-shows.ts';
import { MarkPaths } from './mark-paths.tsx';
import { svgPen } from './svg-pen.ts';

/** Words of the key. */
export type MapKeyWords = {
  /** By type, in the order of the engine's. */
  kinds: readonly string[];
  /** A field with seven of its ten rows. */
  rows: string;
  bare: string;
  /** Land without a mark. */
  unknown: string;
  /** The hand, and its four quarters of the year. */
  hand: string;
  quarters: readonly string[];
  /** Discs of {@link discsMm}. */
  discs: readonly string[];
};

/** Bulbs shown in the key, mm across. */
export const discsMm = [40, 60, 80] as const;

type Item = { draw: (cell: Cell, pen: Pen, discPx: number) => void; text: string };
type Placed = Item & { lines: readonly string[]; x: number; y: number };
type KeyLayout = { items: readonly Placed[]; foot: number };

const sign = 26;
const indent = sign + 8;
const gap = 18;
const pad = 4;

/** What the marks mean, in rows that are as full as they go, from `top` down. */
export function keyLayout(shows: MapShows, words: MapKeyWords, width: number, top: number): KeyLayout {
  const placed: Placed[] = [];
  let [x, y, rowLines] = [pad, top, 1];
  for (const item of itemsOf(shows, words)) {
    const lines = wrapText(item.text, width - 2 * pad - indent, font.small);
    const wide = indent + Math.max(...lines.map((line) => textWidth(line, font.small)));
    if (x > pad && x + wide > width - pad) {
      x = pad;
      y += Math.max(sign, rowLines * lineHeight) + 5;
      rowLines = 1;
    }
    placed.push({ ...item, lines, x, y });
    rowLines = Math.max(rowLines, lines.length);
    x += wide + gap;
  }
  return { items: placed, foot: y + Math.max(sign, rowLines * lineHeight) + 4 };
}

function itemsOf(shows: MapShows, words: MapKeyWords): Item[] {
  const bare: Item = {
    text: words.bare,
    draw: ({ x, y }, pen) => pen.disc('bare', x, y, 1.6),
  };
  const last = [bare, { text: words.unknown, draw: () => {} }];
  const rows: Item = { text: words.rows, draw: (cell, pen) => drawRows(cell, 'good', 90, 0.7, pen) };
  switch (shows) {
    case 'kind':
      return [
        ...onionTypes.map(
          (type, at): Item => ({
            text: words.kinds[at],
            draw: (cell, pen) => drawRows(cell, type, slopeOf[type], 1, pen),
          }),
        ),
        { ...rows, draw: (cell, pen) => drawRows(cell, 'short', slopeOf.short, 0.7, pen) },
        ...last,
      ];
    case 'good':
      return [rows, ...last];
    case 'start':
    case 'tops':
      return [
        { text: words.hand, draw: (cell, pen) => handAt(cell, 0, pen) },
        ...words.quarters.map(
          (text, at): Item => ({
            text,
            draw: (cell, pen) => handAt(cell, (at + 0.5) / 4, pen),
          }),
        ),
        ...last,
      ];
    case 'size':
      return [
        ...words.discs.map(
          (text, at): Item => ({
            text,
            draw: (cell, pen, discPx) => drawBulb(cell, discsMm[at], discPx, pen),
          }),
        ),
        ...last,
      ];
  }
}

/** The signs with their words. @param discPx as on the map; a disc too large for its sign is drawn as large as fits */
export function MapKey({ layout, discPx }: { layout: KeyLayout; discPx: number }) {
  return (
    <>
      {layout.items.map(({ draw, lines, x, y }) => {
        const pen = svgPen();
        draw(signCell(x, y), pen, discPx);
        return (
          <g key={lines.join(' ')}>
            <rect x={px(x)} y={px(y)} width={sign} height={sign} fill={ink.paper2} stroke={ink.line} />
            <MarkPaths paths={pen.paths()} rowWidth={1.2} />
            {lines.map((line, at) => (
              <Label key={line} x={x + indent} y={y + 18 + at * lineHeight} small on={null}>
                {line}
              </Label>
            ))}
          </g>
        );
      })}
    </>
  );
}

function signCell(left: number, top: number): Cell {
  const [right, foot] = [left + sign, top + sign];
  return {
    corners: [
      [left, top],
      [right, top],
      [right, foot],
      [left, foot],
    ],
    x: (left + right) / 2,
    y: (top + foot) / 2,
    width: sign,
    height: sign,
    turn: 0.5,
  };
}

/** The key alone, for a map that is painted apart from it. */
export function AtlasKey(props: {
  shows: MapShows;
  words: MapKeyWords;
  width: number;
  discPx: number;
  summary: string;
}) {
  const { shows, words, width, discPx, summary } = props;
  const layout = keyLayout(shows, words, width, 0);
  return (
    <Picture name="atlas-key" summary={summary} width={width} height={layout.foot}>
      <MapKey layout={layout} discPx={discPx} />
    </Picture>
  );
}
