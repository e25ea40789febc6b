import { gzipSync } from 'node:zlib';
import { weatherBytes } from '@neckfall/engine';
import { zipSync } from 'fflate';
import { describe, expect, test } from 'vitest';
import { openWeatherFile } from '../../src/index.ts';

const table = 'date,temp_min_c,temp_max_c\n2026-03-01,1,9\n';
const bytes = (text: string) => new TextEncoder().encode(text);
const one = (opened: ReturnType<typeof openWeatherFile>) => (opened.ok ? opened.texts[0]! : opened.reason);

describe('the text of a file', () => {
  test.each([
    ['UTF-8', bytes('Höchste,°C'), 'utf-8'],
    ['UTF-8 with a mark', bytes('\uFEFFHöchste,°C'), 'utf-8'],
    ['UTF-16, little end first', new Uint8Array(Buffer.from('\uFEFFHöchste,°C', 'utf16le')), 'utf-16le'],
    [
      'UTF-16, big end first',
      new Uint8Array(Buffer.from('\uFEFFHöchste,°C', 'utf16le').swap16()),
      'utf-16be',
    ],
    [
      'UTF-16 without a mark, little end first',
      new Uint8Array(Buffer.from('Höchste,°C', 'utf16le')),
      'utf-16le',
    ],
    [
      'UTF-16 without a mark, big end first',
      new Uint8Array(Buffer.from('Höchste,°C', 'utf16le').swap16()),
      'utf-16be',
    ],
    ['Windows-1252', Uint8Array.from(Buffer.from('Höchste,°C', 'latin1')), 'windows-1252'],
  ])('is %s', (_, given, encoding) => {
    expect(one(openWeatherFile('a.csv', given))).toEqual({ file: 'a.csv', text: 'Höchste,°C', encoding });
  });

  test('is none in a picture', () => {
    expect(one(openWeatherFile('a.png', Uint8Array.from([0x89, 0x50, 0, 0, 0, 13])))).toBe('no-text');
  });
});

describe('a gzipped file', () => {
  test('is unpacked by its content', () => {
    expect(one(openWeatherFile('a', gzipSync(table)))).toMatchObject({ file: 'a', text: table });
  });

  test('may be of several members (RFC 1952, section 2.2)', () => {
    const twice = Buffer.concat([gzipSync(table), gzipSync('2026-03-02,2,8\n')]);
    expect(one(openWeatherFile('a', twice))).toMatchObject({ text: `${table}2026-03-02,2,8\n` });
  });

  test('that ends too early, or is changed, is damaged', () => {
    const packed = gzipSync(table.repeat(200));
    for (const length of [3, 12, packed.length >> 1, packed.length - 9, packed.length - 1])
      expect(one(openWeatherFile('a', packed.subarray(0, length)))).toBe('damaged');
    // a changed checksum: the text may be another than was packed
    const changed = Uint8Array.from(packed);
    changed[packed.length - 6]! ^= 1;
    expect(one(openWeatherFile('a', changed))).toBe('damaged');
  });

  test('that swells beyond the limit is left', () => {
    expect(one(openWeatherFile('a', gzipSync(new Uint8Array(weatherBytes + 1))))).toBe('too-big');
  });
});

describe('a zip archive', () => {
  test('gives its tables of weather, and not what lies beside them', () => {
    const opened = openWeatherFile(
      'daily.zip',
      zipSync({
        'notes.txt': bytes('About these data'),
        'data/daily.txt': bytes(table),
        'map.pdf': bytes('%PDF'),
      }),
    );
    expect(opened).toMatchObject({ ok: true, texts: [{ file: 'daily.zip/data/daily.txt', text: table }] });
  });

  test('without a table gives what it holds, so that this can be told', () => {
    expect(one(openWeatherFile('a.zip', zipSync({ 'notes.txt': bytes('None here') })))).toMatchObject({
      text: 'None here',
    });
  });

  test('of too much, of too many or half a one is refused', () => {
    const big = zipSync({ 'a.txt': new Uint8Array(weatherBytes + 1) });
    expect(one(openWeatherFile('a.zip', big))).toBe('too-big');
    const names = Array.from({ length: 30 }, (_, at) => [`${at}.txt`, bytes(table)]);
    expect(one(openWeatherFile('a.zip', zipSync(Object.fromEntries(names))))).toBe('too-many-files');
    const packed = zipSync({ 'a.txt': bytes(table.repeat(50)) });
    expect(one(openWeatherFile('a.zip', packed.subarray(0, packed.length - 30)))).toBe('damaged');
    expect(one(openWeatherFile('a.zip', zipSync({ 'map.pdf': bytes('%PDF') })))).toBe('no-text');
  });
});
