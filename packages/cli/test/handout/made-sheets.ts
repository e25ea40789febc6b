import { mkdtempSync, readFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { neckfall, testDay } from '../run-neckfall.ts';

export const folder = mkdtempSync(join(tmpdir(), 'neckfall-sheets-'));

/** Few years are quick; the sheet is as long. */
const quick = ['--today', testDay, '--years', '3'];

/** The file that the command line makes of a place. */
export function madeSheet(name: string, ...args: string[]): Buffer {
  const out = join(folder, name);
  const { code, stdout, stderr } = neckfall('handout', ...args, ...quick, '--out', out);
  if (code !== 0 || stdout !== '') throw new Error(`${code} ${stdout} ${stderr}`);
  return readFileSync(out);
}
