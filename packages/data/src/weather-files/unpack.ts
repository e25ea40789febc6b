import { Gunzip, unzipSync } from 'fflate';
import { crc32 } from './crc32.ts';

export type Packed = 'gzip' | 'zip' | null;

export function packedAs(bytes: Uint8Array): Packed {
  if (bytes[0] === 0x1f && bytes[1] === 0x8b) return 'gzip';
  return bytes[0] === 0x50 && bytes[1] === 0x4b && bytes[2] === 3 && bytes[3] === 4 ? 'zip' : null;
}

export type Unpacked =
  | { ok: true; files: { name: string; bytes: Uint8Array }[] }
  | { ok: false; reason: 'damaged' | 'too-big' | 'too-many-files' };

const pieceBytes = 1 << 16;

/** Of the shortest gzip member: head, nothing packed, checksum and length (RFC 1952). */
const leastGzip = 20;

/** What is inside, at most `most` bytes in all: what swells beyond them is left in time. */
export function gunzipped(bytes: Uint8Array, name: string, most: number): Unpacked {
  if (bytes.length < leastGzip) return { ok: false, reason: 'damaged' };
  const pieces: Uint8Array[] = [];
  let length = 0;
  let members = 1;
  const gunzip = new Gunzip((piece) => {
    length += piece.length;
    if (length <= most) pieces.push(piece);
  });
  gunzip.onmember = () => members++;
  try {
    for (let from = 0; from < bytes.length; from += pieceBytes) {
      gunzip.push(bytes.subarray(from, from + pieceBytes), from + pieceBytes >= bytes.length);
      if (length > most) return { ok: false, reason: 'too-big' };
    }
  } catch {
    return { ok: false, reason: 'damaged' };
  }
  const whole = new Uint8Array(length);
  let at = 0;
  for (const piece of pieces) {
    whole.set(piece, at);
    at += piece.length;
  }
  if (members === 1 && !isWhole(bytes, whole)) return { ok: false, reason: 'damaged' };
  return { ok: true, files: [{ name: name.replace(/\.gz$/i, ''), bytes: whole }] };
}

/** The checksum and length at the end of a gzip member (RFC 1952, section 2.3.1). */
function isWhole(packed: Uint8Array, whole: Uint8Array): boolean {
  const end = new DataView(packed.buffer, packed.byteOffset + packed.length - 8, 8);
  return end.getUint32(0, true) === crc32(whole) && end.getUint32(4, true) === whole.length >>> 0;
}

/** Files in an archive that can be tables: services put manuals and pictures beside them. */
const noTable = /(^|\/)(\.|__MACOSX\/)|\/$|\.(pdf|html?|xml|png|jpe?g|gif|docx?|xlsx?|md)$/i;
const mostFiles = 24;

/** The tables of an archive, at most `most` bytes of them together. */
export function unzipped(bytes: Uint8Array, most: number): Unpacked {
  let length = 0;
  let count = 0;
  try {
    const files = unzipSync(bytes, {
      filter: ({ name, originalSize }) => {
        if (noTable.test(name)) return false;
        length += originalSize;
        count++;
        // no room is made for what goes beyond
        return length <= most && count <= mostFiles;
      },
    });
    if (length > most) return { ok: false, reason: 'too-big' };
    if (count > mostFiles) return { ok: false, reason: 'too-many-files' };
    return { ok: true, files: Object.entries(files).map(([name, bytes]) => ({ name, bytes })) };
  } catch {
    return { ok: false, reason: 'damaged' };
  }
}
