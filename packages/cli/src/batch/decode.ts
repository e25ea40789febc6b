/**
 * Bytes as text, in whatever pieces they come: UTF-8, or UTF-16 by its byte order mark. What is no text becomes
 * U+FFFD, which the rows that hold it are refused for.
 */
export async function* decode(pieces: AsyncIterable<Uint8Array>): AsyncGenerator<string> {
  let decoder: InstanceType<typeof TextDecoder> | null = null;
  let head: Uint8Array = new Uint8Array(0);
  for await (const piece of pieces) {
    if (decoder) {
      yield decoder.decode(piece, { stream: true });
      continue;
    }
    head = head.length === 0 ? piece : joined(head, piece);
    if (head.length < markLength) continue;
    decoder = new TextDecoder(encodingOf(head));
    yield decoder.decode(head, { stream: true });
  }
  decoder ??= new TextDecoder(encodingOf(head));
  // a character cut in two at the end
  yield decoder.decode(head.length < markLength ? head : undefined);
}

/** Bytes by which UTF-16 is told. */
const markLength = 2;

function encodingOf(bytes: Uint8Array): string {
  if (bytes[0] === 0xff && bytes[1] === 0xfe) return 'utf-16le';
  return bytes[0] === 0xfe && bytes[1] === 0xff ? 'utf-16be' : 'utf-8';
}

function joined(a: Uint8Array, b: Uint8Array): Uint8Array {
  const both = new Uint8Array(a.length + b.length);
  both.set(a);
  both.set(b, a.length);
  return both;
}
