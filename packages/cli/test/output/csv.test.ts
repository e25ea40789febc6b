import { expect, test } from 'vitest';
import { csv } from '../../src/output/csv.ts';

test('a table has a header, quotes where needed, and empty cells for nothing', () => {
  expect(csv([{ date: '03-25', note: 'one, "two"', size: null, good: true }])).toBe(
    'date,note,size,good\r\n03-25,"one, ""two""",,true\r\n',
  );
});
