/** Bytes as text, and how they were encoded; null: no text. */
export function textOf(bytes: Uint8Array): { text: string; encoding: string } | null {
  for (const { encoding, mark } of marks) {
    if (mark.every((byte, at) => bytes[at] === byte)) return decoded(bytes, encoding);
  }
  const unmarked = unmarkedUtf16(bytes);
  if (unmarked !== null) return decoded(bytes, unmarked);
  return decoded(bytes, 'utf-8') ?? decoded(bytes, 'windows-1252');
}

/** Byte order marks (the Unicode standard, section 23.8). */
const marks = [
  { encoding: 'utf-8', mark: [0xef, 0xbb, 0xbf] },
  { encoding: 'utf-16le', mark: [0xff, 0xfe] },
  { encoding: 'utf-16be', mark: [0xfe, 0xff] },
] as const;

/** So many bytes show whether every other one is zero, as of Latin letters in UTF-16. */
const shownIn = 400;

/** UTF-16 without a mark, as some programs write it; null for other text. */
function unmarkedUtf16(bytes: Uint8Array): 'utf-16le' | 'utf-16be' | null {
  const zeros = [0, 0];
  const shown = Math.min(shownIn, bytes.length - (bytes.length % 2));
  for (let at = 0; at < shown; at++) if (bytes[at] === 0) zeros[at % 2]!++;
  const [even, odd] = zeros as [number, number];
  if (Math.max(even, odd) < 0.4 * shown || Math.min(even, odd) > 0) return null;
  return odd > even ? 'utf-16le' : 'utf-16be';
}

function decoded(bytes: Uint8Array, encoding: string): { text: string; encoding: string } | null {
  try {
    const text = new TextDecoder(encoding, { fatal: true }).decode(bytes);
    // every byte is a letter of Windows-1252: a picture is told by the zeros in it
    return text.includes('\0') ? null : { text, encoding };
  } catch {
    return null;
  }
}
