import { execFileSync } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';

const root = fileURLToPath(new URL('../', import.meta.url));
const isCheckout = existsSync(join(root, '.git'));

const isText = (file: string) => /\.(ts|tsx|mjs|js|json|md|css|html|csv|txt)$|^[A-Z]+$|^\.ci\//.test(file);
const tracked = isCheckout
  ? execFileSync('git', ['ls-files', '-z'], { cwd: root, encoding: 'utf8' })
      .split('\0')
      .filter((file) => isText(file) && existsSync(join(root, file)))
  : [];
const read = (file: string) => readFileSync(join(root, file), 'utf8');

describe.skipIf(!isCheckout)('files under version control', () => {
  test('hold no path of one machine', () => {
    // written so that this file does not find itself
    const machinePaths = /\/(home|root|Users|work|tmp\/bash_jobs)\/[a-z]/;
    const wrong = tracked.filter((file) => file !== 'package-lock.json' && machinePaths.test(read(file)));
    expect(wrong).toEqual([]);
  });

  test('take the working material from an argument or the environment, never from a path of their own', () => {
    const sharedPath = new RegExp(`\\.\\./${'shared'}\\b`);
    const code = tracked.filter((file) => /\.(ts|mjs|js)$/.test(file));
    expect(code.filter((file) => sharedPath.test(read(file)))).toEqual([]);
  });

  test('are no longer than 300 lines, tables of data apart', () => {
    const long = tracked
      .filter((file) => /\.(ts|tsx|mjs|css|html)$/.test(file))
      .map((file) => ({ file, lines: read(file).split('\n').length - 1 }))
      .filter(({ lines }) => lines > 300);
    expect(long).toEqual([]);
  });
});
