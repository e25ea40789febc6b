import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import fc from 'fast-check';
import { misbehaviourWith } from '../../packages/cli/test/fuzz/answer-table.ts';
import { captured } from '../../packages/cli/test/fuzz/captured.ts';
import { commandLines, filesFor } from '../../packages/cli/test/fuzz/command-lines.ts';
import { tables } from '../../packages/cli/test/fuzz/tables.ts';
import { misbehaviour } from '../../packages/cli/test/fuzz/well-behaved.ts';

/** Cases told of at a time; each round has a seed of its own, so that it can be run again by itself. */
const round = 500;
const [cases, seed] = process.argv.slice(2).map(Number);
const folder = mkdtempSync(join(tmpdir(), 'neckfall-soak-'));
process.on('exit', () => rmSync(folder, { recursive: true, force: true }));
const lines = commandLines(filesFor(folder));
const seen = { lines: 0, refused: 0 };

for (let done = 0; done < cases; done += round) {
  const numRuns = Math.min(round, cases - done);
  const common = { seed: seed * 1_000_000 + done, numRuns };
  const isTables = (done / round) % 5 >= 3;
  await (isTables
    ? fc.assert(
        fc.asyncProperty(tables, async (table) => check(() => misbehaviourWith(table, seen))),
        common,
      )
    : fc.assert(
        fc.asyncProperty(lines, async (args) => check(async () => misbehaviour(await captured(args), args))),
        common,
      ));
  process.send?.(done + numRuns);
}
process.exit();

async function check(work: () => Promise<string | null>): Promise<void> {
  const wrong = await work();
  if (wrong !== null) throw new Error(wrong);
}
