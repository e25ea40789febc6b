import Papa from 'papaparse';

export type CsvValue = string | number | boolean | null;

/** A table of comma-separated values (RFC 4180) with a header; null is an empty cell. */
export function csv(rows: readonly Record<string, CsvValue>[]): string {
  return `${Papa.unparse([...rows], { newline: '\r\n' })}\r\n`;
}
