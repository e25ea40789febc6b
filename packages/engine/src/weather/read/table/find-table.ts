import { weatherColumns, weatherLines } from '../../../limits/index.ts';
import type { WeatherIssue } from '../found.ts';
import { unitOf } from '../units.ts';
import { cellsOf, type Delimiter } from './cells.ts';
import { delimiterOf, isComment, kindOf } from './delimiter.ts';
import { type HeaderName, headerName } from './header-name.ts';
import { isDateName, meaningOf, partOfDate } from './meaning.ts';

/** Where a table stands in a file. */
export type Table = {
  lines: readonly string[];
  delimiter: Delimiter;
  names: HeaderName[];
  /** Line of the names, 0 for the first; −1 where the table has none. */
  header: number;
  /** First line of data. */
  from: number;
};

type Found<T> = { ok: true; value: T } | { ok: false; issue: WeatherIssue };

export const issue = (
  code: WeatherIssue['code'],
  line: number | null,
  received: string,
  expected: string,
  field = '',
): { ok: false; issue: WeatherIssue } => ({
  ok: false,
  issue: { code, line, field: quoted(field), received: quoted(received), expected },
});

const quoted = (text: string) => (text.length > 60 ? `${text.slice(0, 60)}…` : text);

/** The lines of a text; no more of them are cut out than are read. */
export function linesOf(text: string): Found<string[]> {
  // the mark of UTF-8, also where it was read as Windows-1252
  const bare = text.replace(/^(?:\uFEFF|ï»¿)/, '');
  const lines = bare.split(/\r\n|\n|\r/, weatherLines + 2);
  while (lines.length > 0 && lines.at(-1)!.trim() === '') lines.pop();
  if (lines.length <= weatherLines) return { ok: true, value: lines };
  return issue('too-many-lines', weatherLines + 1, '', `at most ${weatherLines} lines`);
}

/** Lines above the data in which its names may stand. */
const headerReach = 8;

/** Finds a table by what its rows have in common. */
export function findTable(lines: readonly string[]): Found<Table> {
  const found = delimiterOf(lines);
  if (found === null) {
    return issue(
      'not-weather',
      null,
      lines.find((line) => line.trim() !== '') ?? '',
      'a table with a date in each row',
    );
  }
  const { delimiter, width } = found;
  if (width > weatherColumns) {
    return issue(
      'too-many-columns',
      null,
      `more than ${weatherColumns} columns`,
      `at most ${weatherColumns} columns`,
    );
  }
  const from = firstOfData(lines, delimiter, width);
  if (from < 0) return issue('no-days', null, '', 'rows of weather below the names of the columns');
  const { names, header } = namesAbove(lines, delimiter, from, width);
  return { ok: true, value: { lines, delimiter, names, header, from } };
}

/** The first line that holds mostly numbers and a date, or of two after another the first that holds numbers. */
function firstOfData(lines: readonly string[], delimiter: Delimiter, width: number): number {
  let candidate = -1;
  let dated = -1;
  for (const [at, line] of lines.entries()) {
    if (line.trim() === '' || isComment(line)) continue;
    const cells = cellsOf(line, delimiter);
    if (!isData(cells, width)) {
      // a line of the station's dates above the names is none of the data
      const isHead = dated >= 0 && understood(cells.map(headerName)) >= 2 && lines.indexOf(line) === at;
      if (dated >= 0 && !isHead) return dated;
      candidate = -1;
      dated = -1;
    } else if (dated >= 0) return dated;
    else if (candidate >= 0) return candidate;
    else if (cells.length >= 0.8 * width && cells.some((cell) => kindOf(cell) === 'date')) dated = at;
    else candidate = at;
  }
  return dated >= 0 ? dated : candidate;
}

function isData(cells: readonly string[], width: number): boolean {
  if (cells.length < Math.max(2, width / 2)) return false;
  let filled = 0;
  let typed = 0;
  for (const cell of cells) {
    const kind = kindOf(cell);
    if (kind !== 'empty') filled++;
    if (kind === 'number' || kind === 'date' || kind === 'time') typed++;
  }
  return typed >= 1 && typed >= filled * 0.4;
}

/** The names of the columns: of the lines above the data those that are understood best, two joined if need be. */
function namesAbove(
  lines: readonly string[],
  delimiter: Delimiter,
  from: number,
  width: number,
): { names: HeaderName[]; header: number } {
  const rows: { at: number; cells: string[] }[] = [];
  for (let at = from - 1; at >= 0 && rows.length < headerReach; at--) {
    const line = lines[at]!.replace(/^\s*(?:#+|\/\/|%)\s*/, '').replace(/^\uFEFF/, '');
    if (line.trim() !== '') rows.push({ at, cells: headerCells(line, delimiter, width) });
  }
  let best = { names: numberedNames(width), header: -1 };
  let most = 0;
  const consider = (texts: string[], row: number, isJoined = false) => {
    const names = withUnitsBelow(texts.map(headerName), rows.slice(0, row));
    // names that say nothing to us are names, too, where they stand just above the data
    const isNames =
      row === 0 && texts.length >= width - 1 && texts.every((text) => kindOf(text) !== 'number');
    const score = understood(names) - 0.01 * row + (isNames ? 0.02 : 0) - (isJoined ? 0.1 : 0);
    if (score > most) {
      best = { names, header: rows[row]!.at };
      most = score;
    }
  };
  for (const [row, { cells }] of rows.entries()) {
    consider(cells, row);
    const above = rows[row + 1]?.cells;
    if (above === undefined || above.length > cells.length + 1 || above.length < 2) continue;
    const filled = above.map((_, at) => above.slice(0, at + 1).findLast((cell) => cell !== '') ?? '');
    consider(
      cells.map((cell, at) => `${above[at] ?? ''} ${cell}`.trim()),
      row,
      true,
    );
    consider(
      cells.map((cell, at) => `${filled[at] ?? ''} ${cell}`.trim()),
      row,
      true,
    );
  }
  return best;
}

/** Names parted by spaces may hold some themselves. */
function headerCells(line: string, delimiter: Delimiter, width: number): string[] {
  if (delimiter !== 'spaces' && delimiter !== 'wide-spaces') return cellsOf(line, delimiter);
  const wide = cellsOf(line, 'wide-spaces');
  const narrow = cellsOf(line, 'spaces');
  return narrow.length === width && wide.length !== width ? narrow : wide.length > 1 ? wide : narrow;
}

export const numberedNames = (width: number): HeaderName[] =>
  Array.from({ length: width }, (_, at) => headerName(`${at + 1}`));

/** Units that stand in a row of their own below the names. */
function withUnitsBelow(names: HeaderName[], below: readonly { cells: string[] }[]): HeaderName[] {
  for (const { cells } of below) {
    const stated = cells.map((cell) => unitOf(cell));
    if (!stated.some((unit) => unit !== null)) continue;
    return names.map((name, at) => (name.unit === null ? { ...name, unit: stated[at] ?? null } : name));
  }
  return names;
}

/** How much of a row of names is understood: different things above all. */
function understood(names: readonly HeaderName[]): number {
  const kinds = new Set<string>();
  let count = 0;
  for (const name of names) {
    const as = meaningOf(name)?.as ?? partOfDate(name) ?? (isDateName(name) ? 'date' : null);
    if (as === null) continue;
    kinds.add(as);
    count += 0.1 + (name.unit === null ? 0 : 0.05);
  }
  return kinds.size + count;
}
