import fc from 'fast-check';
import { expect, test } from 'vitest';
import { decode } from '../../src/batch/decode.ts';

fc.configureGlobal({ seed: 20_270_503 });

async function textOf(bytes: Uint8Array, sizes: readonly number[]): Promise<string> {
  async function* pieces() {
    let at = 0;
    for (const size of sizes) {
      yield bytes.subarray(at, at + size);
      at += size;
    }
    yield bytes.subarray(at);
  }
  let text = '';
  for await (const piece of decode(pieces())) text += piece;
  return text;
}

function utf16(text: string, isLittle: boolean): Uint8Array {
  const bytes = new DataView(new ArrayBuffer(2 + 2 * text.length));
  bytes.setUint16(0, 0xfeff, isLittle);
  for (let i = 0; i < text.length; i++) bytes.setUint16(2 + 2 * i, text.charCodeAt(i), isLittle);
  return new Uint8Array(bytes.buffer);
}

const wellFormed = fc.string({ unit: 'binary' }).filter((text) => !text.startsWith('\ufeff'));
const sizes = fc.array(fc.integer({ min: 0, max: 5 }), { maxLength: 20 });

test('bytes become the text they were, with or without a mark, however they are cut', async () => {
  await fc.assert(
    fc.asyncProperty(wellFormed, sizes, async (text, cuts) => {
      const plain = Buffer.from(text);
      expect(await textOf(plain, cuts)).toBe(text);
      expect(await textOf(Buffer.from(`\ufeff${text}`), cuts)).toBe(text);
      expect(await textOf(utf16(text, true), cuts)).toBe(text);
      expect(await textOf(utf16(text, false), cuts)).toBe(text);
    }),
    { numRuns: 300 },
  );
});

test('a character cut in two at the end shows', async () => {
  const bytes = Buffer.from('é');
  expect(await textOf(bytes.subarray(0, 1), [])).toBe('\ufffd');
  expect(await textOf(utf16('a🧅', true).subarray(0, 6), [])).toBe('a\ufffd');
});

test('nothing is nothing', async () => {
  expect(await textOf(new Uint8Array(0), [])).toBe('');
});
