import { longestRecord } from '@neckfall/engine';

/** One record of a table. `line` is the line of the file that it begins on, the first being 1. */
export type CsvRecord = { line: number; cells: string[]; fault: 'too-long' | null };

/** Takes a table apart piece by piece, however the pieces are cut. */
export type CsvReader = {
  /** Records that the text ends. */
  push(text: string): CsvRecord[];
  /** The record left over at the end of the file, if any. */
  end(): CsvRecord[];
};

const newline = 10;
const carriageReturn = 13;
const quote = 34;
const comma = 44;
const semicolon = 59;

/**
 * Reads values separated by commas or semicolons (RFC 4180), whichever comes first in the file; lines end in
 * LF, CRLF or CR. Keeps no more than one record of at most {@link longestRecord} characters: a longer one is
 * given up as soon as it is too long, and reading goes on at the next line.
 */
export function csvReader(): CsvReader {
  let delimiter = 0;
  let line = 1;
  let firstLine = 1;
  let cells: string[] = [];
  let cell = '';
  let length = 0;
  let state: 'cell-start' | 'plain' | 'quoted' | 'quote-closed' | 'skipping' = 'cell-start';
  let afterReturn = false;

  function push(text: string): CsvRecord[] {
    const records: CsvRecord[] = [];
    /** Where the part of `text` that belongs to the cell begins. */
    let from = 0;
    const take = (to: number) => {
      cell += text.slice(from, to);
    };
    const endCell = () => {
      cells.push(cell);
      cell = '';
      state = 'cell-start';
    };
    const endRecord = () => {
      if (state !== 'skipping') {
        endCell();
        records.push({ line: firstLine, cells, fault: null });
      }
      cells = [];
      cell = '';
      length = 0;
      state = 'cell-start';
      firstLine = line;
    };
    for (let i = 0; i < text.length; i++) {
      if (state === 'skipping') {
        const rest = text.slice(i).search(/[\r\n]/);
        if (rest < 0) break;
        i += rest;
      }
      const code = text.charCodeAt(i);
      const isBreak = code === newline || code === carriageReturn;
      if (afterReturn && code === newline) {
        afterReturn = false;
        // the second half of a line break already seen
        if (state !== 'quoted') from = i + 1;
        continue;
      }
      afterReturn = code === carriageReturn;
      if (isBreak) line++;
      if (++length > longestRecord && state !== 'skipping') {
        records.push({ line: firstLine, cells: [], fault: 'too-long' });
        state = 'skipping';
        cell = '';
        cells = [];
      }
      switch (state) {
        case 'skipping':
          if (!isBreak) continue;
          endRecord();
          from = i + 1;
          continue;
        case 'quoted':
          if (code === quote) {
            take(i);
            state = 'quote-closed';
            from = i + 1;
          }
          continue;
        case 'quote-closed':
          if (code === quote) {
            // two quotes stand for one
            from = i;
            state = 'quoted';
            continue;
          }
          break;
        case 'cell-start':
          if (code === quote) {
            from = i + 1;
            state = 'quoted';
            continue;
          }
      }
      if (delimiter === 0 && (code === comma || code === semicolon)) delimiter = code;
      if (code === delimiter) {
        take(i);
        endCell();
        from = i + 1;
      } else if (isBreak) {
        take(i);
        endRecord();
        from = i + 1;
      } else state = 'plain';
    }
    if (state !== 'skipping') take(text.length);
    return records;
  }

  function end(): CsvRecord[] {
    if (length === 0) return [];
    // a quote still open is closed by the end of the file
    if (state === 'quoted') state = 'quote-closed';
    afterReturn = false;
    return push('\n');
  }

  return { push, end };
}
