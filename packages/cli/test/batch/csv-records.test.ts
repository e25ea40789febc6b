import { longestRecord } from '@neckfall/engine';
import fc from 'fast-check';
import Papa from 'papaparse';
import { describe, expect, test } from 'vitest';
import { type CsvRecord, csvReader } from '../../src/batch/csv-records.ts';

fc.configureGlobal({ seed: 20_270_503 });

function readIn(pieces: readonly string[]): CsvRecord[] {
  const reader = csvReader();
  return [...pieces.flatMap((piece) => reader.push(piece)), ...reader.end()];
}

/** A text cut at some places. */
function cut(text: string, at: readonly number[]): string[] {
  const places = [0, ...at.map((place) => place % (text.length + 1)).sort((a, b) => a - b), text.length];
  return places.slice(1).map((to, i) => text.slice(places[i], to));
}

const cell = fc.string({
  unit: fc.constantFrom('a', 'é', '🧅', '7', '.', ',', ';', '"', ' ', '\n', '\r\n', '\0'),
});
const table = fc
  .integer({ min: 2, max: 5 })
  .chain((width) =>
    fc.array(fc.array(cell, { minLength: width, maxLength: width }), { minLength: 1, maxLength: 8 }),
  )
  // the separator is the first one met outside quotes, so the first line begins with a bare word
  .map((rows) => rows.map((row, at) => (at === 0 ? row.map((_, column) => `c${column}`) : row)));

test('reads what a library has written, however it is cut', () => {
  fc.assert(
    fc.property(
      table,
      fc.constantFrom(',', ';'),
      fc.constantFrom('\n', '\r\n'),
      fc.array(fc.nat(), { maxLength: 6 }),
      (rows, delimiter, newline, cuts) => {
        const text = Papa.unparse(rows, { delimiter, newline, quotes: true }).replace(
          /^.*$/m,
          rows[0].join(delimiter),
        );
        expect(readIn(cut(text, cuts)).map(({ cells }) => cells)).toEqual(rows);
      },
    ),
    { numRuns: 400 },
  );
});

test('takes any text apart the same way however it is cut, and loses no line', () => {
  const anyText = fc.string({
    unit: fc.constantFrom('a', '"', ',', ';', '\n', '\r', '1', '\0'),
    maxLength: 60,
  });
  fc.assert(
    fc.property(anyText, fc.array(fc.nat(), { maxLength: 8 }), (text, cuts) => {
      const whole = readIn([text]);
      expect(readIn(cut(text, cuts))).toEqual(whole);
      for (const [at, { line }] of whole.entries()) expect(line).toBeGreaterThan(whole[at - 1]?.line ?? 0);
    }),
    { numRuns: 1000 },
  );
});

describe('a line', () => {
  test('is counted where it begins, quoted line breaks included', () => {
    const lines = readIn(['a,b\n"1\r\n\n2",x\r\n\r\n3,y\r4,z']);
    expect(lines.map(({ line, cells }) => [line, ...cells])).toEqual([
      [1, 'a', 'b'],
      [2, '1\r\n\n2', 'x'],
      [5, ''],
      [6, '3', 'y'],
      [7, '4', 'z'],
    ]);
  });

  test('may hold a quotation mark in the middle of a cell', () => {
    expect(readIn(['a,b\n5" wide,7\n'])[1].cells).toEqual(['5" wide', '7']);
  });

  test('that is too long is given up, and reading goes on after it', () => {
    const long = 'x'.repeat(longestRecord);
    const records = readIn(['a,b\n', long, long, ',2\n3,4\n']);
    expect(records.map(({ line, fault, cells }) => [line, fault, ...cells])).toEqual([
      [1, null, 'a', 'b'],
      [2, 'too-long'],
      [3, null, '3', '4'],
    ]);
  });

  test('with a quotation mark left open costs no more than the longest record', () => {
    const rows = `${'1,2\n'.repeat(longestRecord / 2)}`;
    const records = readIn(['a,b\n"1,2\n', rows]);
    expect(records.filter(({ fault }) => fault === 'too-long')).toHaveLength(1);
    expect(records.at(-1)?.cells).toEqual(['1', '2']);
  });
});
