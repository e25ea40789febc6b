import { type as font } from '../picture.tsx';
import { wrapText } from '../text-fit.ts';
import type { Onion } from './onion.ts';
import { onionHeightMm } from './onion-shape.tsx';

export type CaptionLine = { text: string; bold: boolean; y: number };
export type RowCell = { x: number; baseY: number; lines: CaptionLine[] };
export type RowLayout = { pxPerMm: number; baselines: number[]; cells: RowCell[]; height: number };

/** A third of an onion's size in life on most screens is the least that shows its rings. */
const scales = { least: 0.9, most: 2.2 } as const;
const gapPx = 12;
/** Room for words under an onion, px. */
const leastCell = 92;
const lineHeight = 17;
const discMm = 23;
const rootRoomMm = 8;

export function drawnWidthMm({ form, acrossMm, rangeMm }: Onion): number {
  const across = Math.max(acrossMm, rangeMm?.to ?? 0);
  if (form === 'green') return across + 66;
  if (form === 'lost') return 26;
  return form === 'thick-neck' ? across * 1.15 : across;
}

/** Pixels a millimetre at which all of these stand in one row, within bounds. */
export function scaleFor(onions: readonly Onion[], width: number, withDisc: boolean): number {
  const mm = onions.reduce((sum, onion) => sum + drawnWidthMm(onion), 0) + (withDisc ? discMm : 0);
  const gaps = gapPx * (onions.length + (withDisc ? 1 : 0));
  return Math.min(scales.most, Math.max(scales.least, (width - gaps) / Math.max(1, mm)));
}

export function rowLayout(props: {
  width: number;
  onions: readonly { onion: Onion; lines: readonly string[] }[];
  discText: string | null;
  pxPerMm?: number | undefined;
}): RowLayout {
  const { width, onions, discText } = props;
  const all = onions.map(({ onion }) => onion);
  const hasDisc = discText !== null;
  const pxPerMm = props.pxPerMm ?? scaleFor(all, width, hasDisc);
  const items = onions.map(({ onion, lines }) => ({
    widthPx: Math.min(width, Math.max(leastCell, drawnWidthMm(onion) * pxPerMm + gapPx)),
    heightPx: onionHeightMm(onion) * pxPerMm,
    lines,
  }));
  if (hasDisc) {
    const widthPx = Math.max(64, discMm * pxPerMm + gapPx);
    items.push({ widthPx, heightPx: discMm * pxPerMm, lines: ['', discText] });
  }
  const rows: (typeof items)[] = [];
  let room = 0;
  for (const item of items) {
    if (rows.length === 0 || item.widthPx > room) {
      rows.push([]);
      room = width;
    }
    rows[rows.length - 1].push(item);
    room -= item.widthPx;
  }
  const cells: RowCell[] = [];
  const baselines: number[] = [];
  let y = 8;
  for (const row of rows) {
    const used = row.reduce((sum, item) => sum + item.widthPx, 0);
    const spare = Math.min(40, (width - used) / row.length);
    const baseY = y + Math.max(...row.map(({ heightPx }) => heightPx));
    const textY = baseY + rootRoomMm * pxPerMm + 16;
    baselines.push(baseY);
    let x = (width - used - spare * row.length) / 2;
    let bottom = textY;
    for (const item of row) {
      const cellWidth = item.widthPx + spare;
      const lines = captionLines(item.lines, cellWidth - 6, textY);
      bottom = Math.max(bottom, ...lines.map((line) => line.y));
      cells.push({ x: x + cellWidth / 2, baseY, lines });
      x += cellWidth;
    }
    y = bottom + 22;
  }
  return { pxPerMm, baselines, cells, height: y - 10 };
}

function captionLines(lines: readonly string[], width: number, top: number): CaptionLine[] {
  const placed: CaptionLine[] = [];
  lines.forEach((line, i) => {
    if (line === '') return;
    const bold = i === 0;
    for (const text of wrapText(line, width, bold ? font.text : font.small))
      placed.push({ text, bold, y: top + placed.length * lineHeight });
  });
  return placed;
}
