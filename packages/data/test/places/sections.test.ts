import { gzipSync } from 'node:zlib';
import { describe, expect, test } from 'vitest';
import { openGazetteer } from '../../src/places/index.ts';
import { openSections, packSections } from '../../src/places/sections.ts';

const packed = packSections('NFXX', 3, [new Uint8Array([1, 2, 3]), new Uint8Array(0), new Uint8Array([4])]);

describe('an asset', () => {
  test.each([
    ['plain', packed],
    ['gzipped', gzipSync(packed)],
  ])('comes back as it was packed, %s', (_, bytes) => {
    expect(openSections(bytes, 'NFXX', 3).map((section) => [...section])).toEqual([[1, 2, 3], [], [4]]);
  });

  test('of another kind is refused by name', () => {
    expect(() => openSections(packed, 'NFTN', 3)).toThrow('starts with "NFXX" where NFTN was expected');
    expect(() => openSections(new Uint8Array(0), 'NFTN', 3)).toThrow('starts with ""');
    expect(() => openGazetteer(packed)).toThrow('NFTN');
  });

  test('of another version says which', () => {
    expect(() => openSections(packed, 'NFXX', 4)).toThrow('version 3, but this program reads version 4');
  });

  test('cut short at any byte is refused', () => {
    for (let length = 0; length < packed.length; length++) {
      expect(() => openSections(packed.subarray(0, length), 'NFXX', 3)).toThrow(/asset/);
    }
  });
});
