import { type as font, lineHeight } from '../drawing/picture.tsx';
import { boldWidth, textWidth, wrapText } from '../drawing/text-fit.ts';
import { drawnAcrossMm } from './contour.ts';
import { discMm, type Onion } from './onion.ts';
import { onionHeightMm } from './onion-shape.tsx';

type CaptionLine = { text: string; bold: boolean; y: number };
/** `onion` is the index of the onion that stands there, null for the disc. */
type RowCell = { x: number; baseY: number; lines: CaptionLine[]; onion: number | null };
export type RowLayout = { pxPerMm: number; baselines: number[]; cells: RowCell[]; height: number };

/** Pixels a millimetre: below the least an onion's rings run together. */
const scales = { least: 0.9, inLines: 1.3, most: 2.2 } as const;
const gapPx = 12;
/** Room for words under an onion, px; a longer word makes its own. */
const leastCell = 74;
/** Where onions take several lines, about so many stand in each. */
const usualInLine = 3;
/** Most room that is added between two, where there is any left, px. */
const mostSpare = 72;
/** Widest of the words under the disc, px. */
const discWords = 66;
/** Widths that were made to fit may add up to a hair more, px. */
const rounding = 0.01;
const rootRoomMm = 8;

export function drawnWidthMm(onion: Onion): number {
  const { form } = onion;
  const across = drawnAcrossMm(onion);
  if (form === 'green') return across + 34;
  if (form === 'lost') return 26;
  return form === 'thick-neck' ? across * 1.15 : across;
}

/** Pixels a millimetre at which all of these stand in one line if they can, else in several. */
function scaleFor(onions: readonly Onion[], width: number, withDisc: boolean): number {
  const mm = onions.reduce((sum, onion) => sum + drawnWidthMm(onion), 0) + (withDisc ? discMm : 0);
  const gaps = gapPx * (onions.length + (withDisc ? 1 : 0));
  // beside small onions it is the disc's words that need room
  const besideWords = (width - gaps + gapPx - discWords) / Math.max(1, mm - discMm);
  const inOneLine = Math.min((width - gaps) / Math.max(1, mm), withDisc ? besideWords : scales.most);
  if (inOneLine >= scales.least) return Math.min(scales.most, inOneLine);
  const widest = Math.max(1, ...onions.map(drawnWidthMm));
  return Math.min(scales.inLines, Math.max(scales.least, (width / usualInLine - gapPx) / widest));
}

export function rowLayout(props: {
  width: number;
  onions: readonly { onion: Onion; lines: readonly string[] }[];
  discText: string | null;
  pxPerMm?: number | undefined;
}): RowLayout {
  const { width, onions, discText } = props;
  const all = onions.map(({ onion }) => onion);
  const pxPerMm = props.pxPerMm ?? scaleFor(all, width, discText !== null);
  const items = onions.map(({ onion, lines }) => ({
    widthPx: Math.min(width, Math.max(leastCell, longestWord(lines), drawnWidthMm(onion) * pxPerMm + gapPx)),
    heightPx: onionHeightMm(onion) * pxPerMm,
    lines,
  }));
  // the disc ends a single line; where there are several it stands first, since what comes last may stand alone
  let discAt = -1;
  if (discText !== null) {
    const widthPx = Math.max(longestWord(['', discText]), discMm * pxPerMm + gapPx);
    const disc = { widthPx, heightPx: discMm * pxPerMm, lines: ['', discText] };
    const inOneLine = items.reduce((sum, item) => sum + item.widthPx, widthPx) <= width + rounding;
    discAt = inOneLine ? items.length : 0;
    items.splice(discAt, 0, disc);
  }
  const rows: (typeof items)[] = [];
  let room = 0;
  for (const item of items) {
    if (rows.length === 0 || item.widthPx > room + rounding) {
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
    const spare = Math.min(mostSpare, (width - used) / row.length);
    const baseY = y + Math.max(...row.map(({ heightPx }) => heightPx));
    const textY = baseY + rootRoomMm * pxPerMm + 16;
    baselines.push(baseY);
    let x = (width - used - spare * row.length) / 2;
    let bottom = textY;
    for (const item of row) {
      const cellWidth = item.widthPx + spare;
      const lines = captionLines(item.lines, cellWidth - 10, textY);
      bottom = Math.max(bottom, ...lines.map((line) => line.y));
      cells.push({ x: x + cellWidth / 2, baseY, lines, onion: null });
      x += cellWidth;
    }
    y = bottom + 22;
  }
  let onion = 0;
  cells.forEach((cell, i) => {
    if (i !== discAt) cell.onion = onion++;
  });
  return { pxPerMm, baselines, cells, height: y - 10 };
}

function longestWord(lines: readonly string[]): number {
  const widths = lines.flatMap((line, i) => line.split(' ').map((word) => textWidth(word, captionSize(i))));
  return Math.max(0, ...widths) + 10;
}

function captionLines(lines: readonly string[], width: number, top: number): CaptionLine[] {
  const placed: CaptionLine[] = [];
  lines.forEach((line, i) => {
    if (line === '') return;
    for (const text of wrapText(line, width, captionSize(i)))
      placed.push({ text, bold: i === 0, y: top + placed.length * lineHeight });
  });
  return placed;
}

/** Size of a line of caption as its width is reckoned, px: the first is set bold. */
function captionSize(line: number): number {
  return line === 0 ? font.text * boldWidth : font.small;
}
