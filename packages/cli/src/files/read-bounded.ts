import { closeSync, fstatSync, openSync, readSync } from 'node:fs';

const pieceBytes = 1 << 16;

/**
 * The bytes of a file, or null where it has more than `most`: no more than that are read, so that a pipe or a device
 * without an end is left in time too. Throws as readFileSync does.
 */
export function readBounded(path: string, most: number): Buffer | null {
  const file = openSync(path, 'r');
  try {
    if (fstatSync(file).size > most) return null;
    const pieces: Buffer[] = [];
    for (let length = 0; length <= most; ) {
      const piece = Buffer.allocUnsafe(pieceBytes);
      const read = readSync(file, piece);
      if (read === 0) return Buffer.concat(pieces, length);
      pieces.push(piece.subarray(0, read));
      length += read;
    }
    return null;
  } finally {
    closeSync(file);
  }
}
