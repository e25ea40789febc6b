import fc from 'fast-check';
import { expect, test } from 'vitest';
import { misbehaviourWith } from './answer-table.ts';
import { tables } from './tables.ts';

test('600 tables, whole and torn, end in lines or in one that refuses them', async () => {
  const seen = { lines: 0, refused: 0 };
  await fc.assert(
    fc.asyncProperty(tables, async (table) => {
      expect(await misbehaviourWith(table, seen)).toBeNull();
    }),
    { seed: 20_270_503, numRuns: 600 },
  );
  expect(seen.lines).toBeGreaterThan(100);
  expect(seen.refused).toBeGreaterThan(10);
}, 240_000);
