import { cellsOf, type Delimiter, delimiters } from './cells.ts';
import { parseDateCell, parseTime } from './date-cells.ts';

const numeric =
  /^[+\-\u2212]?(?:\d+(?:[.,']\d+|[ \u00a0\u202f]\d{3})*[.,]?|[.,]\d+)(?:e[+-]?\d+)?\s?[a-z°%*"℃℉²/]{0,5}$/i;

export type CellKind = 'empty' | 'number' | 'date' | 'time' | 'text';

export function kindOf(cell: string): CellKind {
  if (cell === '' || cell === '-' || cell === '--' || cell === '---') return 'empty';
  if (cell.length <= 30 && numeric.test(cell)) return 'number';
  if (parseDateCell(cell) !== null) return 'date';
  if (cell.length <= 14 && parseTime(cell) !== null) return 'time';
  return /^(?:n\/?a|nan|null|none|m|nd|n\.?d\.?|missing|\.|\*+|x)$/i.test(cell) ? 'empty' : 'text';
}

/** Lines in which the cells of a table are looked at: from all over it, and no more than are quickly seen. */
export function sampleOf(lines: readonly string[], most: number): string[] {
  const step = Math.max(1, lines.length / most);
  const sample: string[] = [];
  for (let at = 0; at < lines.length; at += step) {
    const line = lines[Math.floor(at)]!;
    if (line.trim() !== '' && !isComment(line)) sample.push(line);
  }
  return sample;
}

export function isComment(line: string): boolean {
  return /^\s*(?:#|\/\/|%)/.test(line);
}

const sampledLines = 150;

/** What parts the cells of a table, and how many a line has; null for what is none. */
export function delimiterOf(lines: readonly string[]): { delimiter: Delimiter; width: number } | null {
  const sample = sampleOf(lines, sampledLines);
  let best: { delimiter: Delimiter; width: number } | null = null;
  let most = 0;
  for (const delimiter of delimiters) {
    const rows = sample.map((line) => cellsOf(line, delimiter));
    const width = commonest(rows.map(({ length }) => length).filter((length) => length > 1));
    if (width < 2) continue;
    const alike = rows.filter(({ length }) => length === width);
    let filled = 0;
    let typed = 0;
    for (const row of alike) {
      for (const cell of row) {
        const kind = kindOf(cell);
        if (kind === 'empty') continue;
        filled++;
        if (kind !== 'text') typed++;
      }
    }
    const score = ((filled === 0 ? 0 : typed / filled) * alike.length) / sample.length;
    if (score > most + 1e-9) {
      best = { delimiter, width };
      most = score;
    }
  }
  return most < 0.1 ? null : best;
}

/** The length that most cells are in lines of: a few long lines tell more of a table than many short ones above it. */
function commonest(lengths: readonly number[]): number {
  const cells = new Map<number, number>();
  let best = 0;
  for (const length of lengths) {
    const count = (cells.get(length) ?? 0) + length;
    cells.set(length, count);
    if (count > (cells.get(best) ?? 0)) best = length;
  }
  return best;
}
