import { expect, test } from 'vitest';
import { csvText } from '../../src/files/csv-text.ts';

test('a table has a header, a line a row, and cells quoted where RFC 4180 asks it', () => {
  const rows = [
    { a: 1, b: 'two' },
    { a: null, b: 'a "b", c' },
    { a: 0.5, b: 'line\nbreak' },
  ];
  expect(csvText(rows)).toBe('a,b\r\n1,two\r\n,"a ""b"", c"\r\n0.5,"line\nbreak"\r\n');
  expect(csvText([])).toBe('');
});
