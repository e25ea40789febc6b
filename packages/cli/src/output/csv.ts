import { shown } from '@neckfall/words';
import Papa from 'papaparse';

export type CsvValue = string | number | boolean | null;

/** What a spreadsheet takes for a formula, quoted or set in as it may be; a number is none. */
const formula = /^(?![+-]?\d+(\.\d+)?$)[\s"']*[=+\-@＝＋－＠]/;

/** A table of comma-separated values (RFC 4180) with a header; null is an empty cell. Names cannot turn into formulas. */
export function csv(rows: readonly Record<string, CsvValue>[]): string {
  const seen = rows.map((row) =>
    Object.fromEntries(
      Object.entries(row).map(([name, value]) => [name, typeof value === 'string' ? asText(value) : value]),
    ),
  );
  return `${Papa.unparse(seen, { newline: '\r\n' })}\r\n`;
}

/** Marked by an apostrophe, as spreadsheets mark text. */
function asText(value: string): string {
  const text = shown(value);
  return formula.test(text) ? `'${text}` : text;
}

/** A cell without that mark. */
export function withoutMark(cell: string): string {
  const rest = cell.slice(1);
  return cell[0] === "'" && formula.test(rest) ? rest : cell;
}
