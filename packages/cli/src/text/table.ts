import { shown } from '@neckfall/words';

export type Column = { title: string; right?: boolean };

/** A plain table: columns two spaces apart, nothing drawn. Lines have no spaces at their end. */
export function table(columns: readonly Column[], rows: readonly (readonly string[])[]): string {
  const seen = rows.map((row) => row.map((cell) => shown(cell)));
  const lines = columns.every(({ title }) => title === '')
    ? seen
    : [columns.map(({ title }) => title), ...seen];
  const widths = columns.map((_, i) => Math.max(...lines.map((line) => widthOf(line[i]))));
  return lines
    .map((line) => {
      const cells = line.map((cell, i) => {
        const space = ' '.repeat(widths[i] - widthOf(cell));
        return columns[i].right ? space + cell : cell + space;
      });
      return `  ${cells.join('  ')}`.trimEnd();
    })
    .join('\n');
}

/** Letters with combining marks count once. */
function widthOf(text: string): number {
  return [...text.normalize('NFC')].length;
}
