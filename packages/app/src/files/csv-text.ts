type Cell = string | number | null;

/** A table of comma-separated values (RFC 4180) with a header; null is an empty cell. */
export function csvText(rows: readonly Record<string, Cell>[]): string {
  const [first] = rows;
  if (!first) return '';
  const head = Object.keys(first);
  return [head, ...rows.map((row) => head.map((name) => row[name]))]
    .map((cells) => `${cells.map(cellText).join(',')}\r\n`)
    .join('');
}

function cellText(cell: Cell): string {
  const text = cell === null ? '' : String(cell);
  return /[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}
