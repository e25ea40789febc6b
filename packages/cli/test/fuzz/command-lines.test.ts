import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import fc from 'fast-check';
import { afterAll, expect, test } from 'vitest';
import { captured } from './captured.ts';
import { commandLines, filesFor } from './command-lines.ts';
import { misbehaviour } from './well-behaved.ts';

const folder = mkdtempSync(join(tmpdir(), 'neckfall-fuzz-'));
afterAll(() => rmSync(folder, { recursive: true }));

test('600 command lines end in an answer or in one line that refuses them', async () => {
  const codes = new Map<number, number>();
  await fc.assert(
    fc.asyncProperty(commandLines(filesFor(folder)), async (args) => {
      const result = await captured(args);
      codes.set(result.code, (codes.get(result.code) ?? 0) + 1);
      expect(misbehaviour(result, args)).toBeNull();
    }),
    { seed: 20_270_503, numRuns: 600 },
  );
  // every way to end is met often
  for (const code of [0, 2, 3]) expect(codes.get(code)).toBeGreaterThan(10);
}, 240_000);
