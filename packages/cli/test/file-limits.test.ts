import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { batchBytes, batchLines, gardenBytes, gardenEntries, longestCell } from '@neckfall/engine';
import { speaker } from '@neckfall/words';
import { afterAll, describe, expect, test } from 'vitest';
import { openRows } from '../src/batch/open-rows.ts';
import { refusalOf } from '../src/refusal/refusal.ts';
import { neckfall, neckfallQuick, type Run, testDay } from './run-neckfall.ts';

const folder = mkdtempSync(join(tmpdir(), 'neckfall-limits-'));
afterAll(() => rmSync(folder, { recursive: true }));
const endless = '/dev/zero';

const refusedWith = (...args: string[]) => refusalIn(neckfallQuick(...args));

function refusalIn({ code, stdout, stderr }: Run): string {
  expect({ code, stdout }).toEqual({ code: 3, stdout: '' });
  expect(stderr.trimEnd().split('\n')).toHaveLength(1);
  return stderr;
}

describe.skipIf(!existsSync(endless))('a file without an end is given up at the limit:', () => {
  test.each([
    ['--garden', ['which', 'Lyon'], '32 MB'],
    ['--weather', ['where', 'Lyon'], '48 MB'],
    ['--batch', ['where'], '65,536 characters'],
  ])('%s', (option, command, limit) => {
    const said = refusedWith(...command, option, endless);
    expect(said).toContain(`${option} ${endless}`);
    expect(said).toContain(limit);
  });
});

describe('a garden file', () => {
  const file = (name: string, plantings: object[]): string => {
    const path = join(folder, name);
    writeFileSync(path, JSON.stringify({ schema: 'neckfall/garden@1', plantings }));
    return path;
  };

  test('with more entries than a garden has is refused', () => {
    const path = file('long.json', Array(gardenEntries.plantings + 1).fill({}));
    const said = refusedWith('which', 'Lyon', '--garden', path);
    expect(said).toContain('5,001');
    expect(said).toContain('5,000');
  });

  const entry = '{"date":"2027-05-01","leavesGreen":5}';
  test.each([
    ['has as many entries as it may', Array(gardenEntries.observations).fill(entry).join(','), '100,000'],
    ['is as long as it may be', `${entry}${' '.repeat(gardenBytes - 200)}`, '32 MB'],
  ])('that %s takes no entry more, and stays as it is', (_, observations, limit) => {
    const path = join(folder, 'full.json');
    const text = `{"schema":"neckfall/garden@1","plantings":[{"id":"a","name":"Bed"}],"observations":[${observations}]}`;
    writeFileSync(path, text);
    const more = ['--planting', 'a', '--note', 'x'.repeat(200), '--today', testDay];
    const said = refusalIn(neckfall('record', path, ...more));
    expect(said).toContain(limit);
    expect(readFileSync(path, 'utf8') === text).toBe(true);
  });

  test('damaged from end to end is told of in a few lines', () => {
    const path = file('damaged.json', Array(60).fill({ name: 'By the wall', class: 7, start: 7 }));
    const { code, stderr } = neckfallQuick('which', 'Lyon', '--have', 'Copra', '--garden', path);
    expect(code).toBe(0);
    expect(stderr.match(/plantings\[/g)).toHaveLength(20);
    expect(stderr).toContain('160 more');
  });
});

describe('a batch', () => {
  const voice = speaker('metric');
  /** What is asked of a stream that gives the same piece for ever, and how it ends. */
  async function endlessBatch(head: string, piece: string) {
    let bytes = 0;
    async function* input(): AsyncGenerator<Uint8Array> {
      yield Buffer.from(head);
      const more = Buffer.from(piece);
      for (; bytes < 2 * batchBytes; bytes += more.length) yield more;
    }
    let rows = 0;
    try {
      for await (const _ of openRows('-', 'where', voice, input())) rows++;
    } catch (error) {
      return { rows, bytes, code: refusalOf(error)?.code };
    }
    return { rows, bytes, code: null };
  }

  test('whose first line does not end is refused at the limit of a row', async () => {
    const { bytes, code } = await endlessBatch('', ','.repeat(1 << 16));
    expect(code).toBe('batch-first-line');
    expect(bytes).toBeLessThan(1 << 20);
  });

  test.each([
    ['blank lines', '\n'.repeat(1 << 16), 'batch-too-many', 2 * batchLines],
    ['a line', ' '.repeat(1 << 20), 'batch-too-big', batchBytes + (1 << 21)],
  ])('of %s without an end is refused at the limit', async (_, piece, refusal, most) => {
    const { bytes, code } = await endlessBatch('latitude,longitude\n', piece);
    expect(code).toBe(refusal);
    expect(bytes).toBeLessThan(most);
  });

  test('with a cell as long as a page fails that row alone', async () => {
    const text = `latitude,longitude,id\n45,4,${'x'.repeat(longestCell + 1)}\n45,4,b\n`;
    const faults = [];
    for await (const { fault } of openRows('-', 'where', voice, pieces(text))) faults.push(fault);
    expect(faults).toEqual(['long-cell', null]);
  });
});

async function* pieces(text: string): AsyncGenerator<Uint8Array> {
  yield Buffer.from(text);
}
