import { spawnSync } from 'node:child_process';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { neckfall, program, testDay } from '../run-neckfall.ts';
import { errorsIn, folder, header, linesOf, makeFolder } from './lines-of.ts';

makeFolder();

describe('a file', () => {
  const rows = `${header}\né,45.76,4.84,long,sets,03-25\n`;

  test.each([
    ['UTF-8 with a mark', Buffer.from(`\ufeff${rows}`)],
    ['UTF-16, little end first', Buffer.from(`\ufeff${rows}`, 'utf16le')],
    ['UTF-16, big end first', Buffer.from(`\ufeff${rows}`, 'utf16le').swap16()],
  ])('may be in %s', (_, bytes) => {
    const { code, lines } = linesOf('season', bytes);
    expect({ code, id: lines[0].id }).toEqual({ code: 0, id: 'é' });
  });

  test('may come in by standard input', () => {
    const { status, stdout } = spawnSync(
      process.execPath,
      [program, 'season', '--batch', '-', '--years', '1', '--today', testDay],
      { input: rows, encoding: 'utf8' },
    );
    expect(status).toBe(0);
    expect(JSON.parse(stdout).id).toBe('é');
  });

  test('in another encoding, or cut in the middle of a character, fails the rows it cannot read', () => {
    const latin = Buffer.from(rows, 'latin1');
    const whole = Buffer.from(`${rows}b,45.76,4.84,long,sets,03-25\nù`);
    expect(
      errorsIn(linesOf('season', Buffer.concat([latin, Buffer.from('b,45,4,long,sets,03-25')])).lines),
    ).toEqual([
      [2, 'row-encoding', null],
      ['b', 'answered', null],
    ]);
    expect(errorsIn(linesOf('season', whole.subarray(0, whole.length - 1)).lines).at(-1)?.[1]).toBe(
      'row-encoding',
    );
  });

  test('with a line of ten million characters fails that row alone', () => {
    const { code, lines } = linesOf(
      'season',
      `${header}\n${'7'.repeat(10_000_000)}\nb,45.76,4.84,long,sets,03-25\n`,
    );
    expect(code).toBe(0);
    expect(errorsIn(lines)).toEqual([
      [2, 'row-too-long', null],
      ['b', 'answered', null],
    ]);
  });

  test.each([
    ['of which every row fails', `${header}\na,91,0,long,sets,03-25\n`, /its one row was not answered/],
    ['without rows', `${header}\n`, /has no rows/],
    ['without anything', '', /has no rows/],
    [
      'with an unknown column',
      'latitude,longitude,cover_\n1,2,3\n',
      /no column is called "cover_". Did you mean cover\?/,
    ],
    ['with a column twice', 'latitude,longitude,Latitude\n1,2,3\n', /"Latitude" comes twice/],
    ['without a column it needs', 'latitude,class\n1,long\n', /"longitude" is missing/],
    ['in UTF-16 without a mark', Buffer.from(`${header}\n`, 'utf16le'), /is not text in UTF-8/],
    ['that is no text', Uint8Array.from({ length: 4000 }, (_, i) => (i * 89) % 256), /is not text in UTF-8/],
  ])('%s is refused', (_, content, message) => {
    const { code, stderr } = linesOf('season', content);
    expect(code).toBe(3);
    expect(stderr).toMatch(message);
    expect(stderr.split('\n')).toHaveLength(2);
  });

  test('that is missing or a folder is refused', () => {
    for (const [path, message] of [
      [join(folder, 'none.csv'), /there is no such file/],
      [folder, /is a folder/],
    ] as const) {
      const { code, stdout, stderr } = neckfall('season', '--batch', path);
      expect({ code, stdout }).toEqual({ code: 3, stdout: '' });
      expect(stderr).toMatch(message);
    }
  });
});

test.each([
  [['Lyon'], /^Lyon does not go with --batch/],
  [['--at', '45,4'], /^--at does not go with --batch/],
  [['--csv'], /^--csv does not go with --batch/],
  [['--weather', 'w.csv'], /^--weather does not go with --batch/],
  [['--years', '0'], /^--years 0: expected/],
])('--batch with %s is refused', (args, message) => {
  const { code, stdout, stderr } = neckfall('where', '--batch', 'no.csv', ...args);
  expect({ code, stdout }).toEqual({ code: 2, stdout: '' });
  expect(stderr).toMatch(message);
});
