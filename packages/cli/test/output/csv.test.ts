import { shown } from '@neckfall/words';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { csvReader } from '../../src/batch/csv-records.ts';
import { rowOf } from '../../src/batch/rows.ts';
import { csv } from '../../src/output/csv.ts';

test('a table has a header, quotes where needed, and empty cells for nothing', () => {
  expect(csv([{ date: '03-25', note: 'one, "two"', size: null, good: true }])).toBe(
    'date,note,size,good\r\n03-25,"one, ""two""",,true\r\n',
  );
});

const cellsOf = (text: string) => csv([{ text }]).split('\r\n')[1];

describe('a cell that a spreadsheet would reckon with', () => {
  // the characters are those of OWASP's page on CSV injection, from memory
  test.each(['=1+1', '+1+1', '-1+1', '@SUM(A1)', ' =1', '"=1', "'=1", '＝1', '- Lyon'])(
    'is marked as text: %s',
    (text) => {
      expect(cellsOf(text).replace(/^"/, '')).toMatch(/^'/);
    },
  );

  test.each(['\t=1', '\r=1', '\ufeff=1'])('begins with nothing that is swallowed: %j', (text) => {
    expect(cellsOf(text)).toMatch(/^\\u\{/);
  });

  test.each([-0.13, 1e-7, -12])('is none where it is a number: %d', (number) => {
    expect(csv([{ number }])).toBe(`number\r\n${number}\r\n`);
  });

  test.each(['-0.13', '+3', 'Red - one', '03-25'])('is none where its words are harmless: %s', (text) => {
    expect(cellsOf(text)).toBe(text);
  });

  test('is read again by a batch as it was, whatever it is', () => {
    const start = fc.constantFrom('', "'", '"', ' ', '=', '-', '+', '@', "'-1", '＝');
    const visible = fc
      .string({ unit: 'grapheme', minLength: 1 })
      .filter((text) => text.trim() !== '' && shown(text) === text);
    fc.assert(
      fc.property(start, start, visible, (one, two, rest) => {
        const id = one + two + rest;
        const [, record] = csvReader().push(csv([{ id, latitude: -0.13 }]));
        expect(rowOf(record, ['id', 'latitude']).cells).toEqual({ id, latitude: '-0.13' });
      }),
      { seed: 20_270_503, numRuns: 3000 },
    );
  });
});
