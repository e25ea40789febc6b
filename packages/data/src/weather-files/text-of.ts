/** Bytes as text, and how they were encoded; null: no text. */
export function textOf(bytes: Uint8Array): { text: string; encoding: string } | null {
  for (const { encoding, mark } of marks) {
    if (mark.every((byte, at) => bytes[at] === byte)) return decoded(bytes, encoding);
  }
  return decoded(bytes, 'utf-8') ?? decoded(bytes, 'windows-1252');
}

/** Byte order marks (the Unicode standard, section 23.8). */
const marks = [
  { encoding: 'utf-8', mark: [0xef, 0xbb, 0xbf] },
  { encoding: 'utf-16le', mark: [0xff, 0xfe] },
  { encoding: 'utf-16be', mark: [0xfe, 0xff] },
] as const;

function decoded(bytes: Uint8Array, encoding: string): { text: string; encoding: string } | null {
  try {
    const text = new TextDecoder(encoding, { fatal: true }).decode(bytes);
    // every byte is a letter of Windows-1252: a picture is told by the zeros in it
    return text.includes('\0') ? null : { text, encoding };
  } catch {
    return null;
  }
}
