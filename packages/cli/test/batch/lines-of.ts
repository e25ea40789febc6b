import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { Ajv } from 'ajv';
import { afterAll, expect } from 'vitest';
import { neckfallQuick } from '../run-neckfall.ts';

/** Of the tests that run. */
export let folder = '';

/** Makes a folder for the tests of a file, which is gone after them. */
export function makeFolder(): void {
  folder = mkdtempSync(join(tmpdir(), 'neckfall-batch-'));
  afterAll(() => rmSync(folder, { recursive: true }));
}

export function file(name: string, content: string | Uint8Array): string {
  const path = join(folder, name);
  writeFileSync(path, content);
  return path;
}

const ajv = new Ajv({ strict: true, allowUnionTypes: true });
const isLine = {
  season: ajv.compile(schema('season-line')),
  where: ajv.compile(schema('where-line')),
};
function schema(name: string) {
  return JSON.parse(readFileSync(new URL(`../../schemas/${name}@1.json`, import.meta.url), 'utf8'));
}

/** The lines of a batch, each checked against the published schema. */
export function linesOf(command: 'season' | 'where', content: string | Uint8Array, ...args: string[]) {
  const run = neckfallQuick(command, '--batch', file('rows.csv', content), ...args);
  const lines = run.stdout
    .split('\n')
    .filter((line) => line !== '')
    .map((line) => JSON.parse(line));
  for (const line of lines) {
    isLine[command](line);
    expect(isLine[command].errors).toBeNull();
  }
  return { ...run, lines };
}

/** Each line's id, and the code and column of its error. */
export const errorsIn = (lines: { id: string | number; error?: { code: string; field: string | null } }[]) =>
  lines.map(({ id, error }) => [id, error?.code ?? 'answered', error?.field ?? null]);

export const header = 'id,latitude,longitude,class,start,date';
