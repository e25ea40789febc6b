import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { captured } from '../../packages/cli/test/fuzz/captured.ts';
import { commandLines, filesFor } from '../../packages/cli/test/fuzz/command-lines.ts';
import { misbehaviour } from '../../packages/cli/test/fuzz/well-behaved.ts';
import { attack } from './attack.ts';

const folder = mkdtempSync(join(tmpdir(), 'neckfall-soak-'));
process.on('exit', () => rmSync(folder, { recursive: true, force: true }));

export const ofCommandLines = attack(
  'command lines: every command and option, one thing or another wrong',
  3,
  commandLines(filesFor(folder)),
  async (args) => misbehaviour(await captured(args), args),
);
