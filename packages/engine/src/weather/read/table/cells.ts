import { weatherColumns } from '../../../limits/index.ts';

/** What stands between cells; `spaces` one or more of them, `wide-spaces` two or more. */
export type Delimiter = ',' | ';' | '\t' | '|' | 'wide-spaces' | 'spaces';
export const delimiters: readonly Delimiter[] = [';', '\t', '|', ',', 'wide-spaces', 'spaces'];

/** Cells of a line, trimmed and without their quotation marks, and no more of them than `most`. */
export function cellsOf(line: string, delimiter: Delimiter, most: number = weatherColumns + 1): string[] {
  if (delimiter === 'spaces' || delimiter === 'wide-spaces') {
    const between = delimiter === 'spaces' ? /\s+/ : /\s{2,}|\t/;
    return line.includes('"') ? quotedCells(line.trim(), ' ', most) : line.trim().split(between, most);
  }
  if (line.includes('"')) return quotedCells(line, delimiter, most);
  const cells = line.split(delimiter, most);
  for (let at = 0; at < cells.length; at++) cells[at] = cells[at]!.trim();
  return cells;
}

/** As RFC 4180 has them; a mark inside a cell that does not begin with one is a character like others. */
function quotedCells(line: string, delimiter: string, most: number): string[] {
  const cells: string[] = [];
  let from = 0;
  while (from <= line.length && cells.length < most) {
    let start = from;
    while (line[start] === ' ' && delimiter !== ' ') start++;
    if (line[start] === '"') {
      let end = line.indexOf('"', start + 1);
      while (end >= 0 && line[end + 1] === '"') end = line.indexOf('"', end + 2);
      if (end < 0) end = line.length;
      cells.push(
        line
          .slice(start + 1, end)
          .replaceAll('""', '"')
          .trim(),
      );
      const next = line.indexOf(delimiter, end);
      from = next < 0 ? line.length + 1 : next + 1;
    } else {
      const next = line.indexOf(delimiter, from);
      const end = next < 0 ? line.length : next;
      cells.push(line.slice(from, end).trim());
      from = end + 1;
    }
    if (delimiter === ' ') while (line[from] === ' ') from++;
  }
  return cells;
}
