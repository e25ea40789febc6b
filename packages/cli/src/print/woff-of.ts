import { deflateSync } from 'node:zlib';

const headerBytes = 44;
const entryBytes = 20;
const tableBytes = 16;

/** A TrueType file packed for the web. Source: WOFF File Format 1.0 (W3C Recommendation, 2012), sections 3 to 5. */
export function woffOf(font: Buffer): Buffer {
  const count = font.readUInt16BE(4);
  const tables = Array.from({ length: count }, (_, at) => {
    const entry = font.subarray(12 + at * tableBytes);
    const offset = entry.readUInt32BE(8);
    const length = entry.readUInt32BE(12);
    const plain = font.subarray(offset, offset + length);
    const packed = deflateSync(plain, { level: 9 });
    return {
      tag: entry.subarray(0, 4),
      checksum: entry.readUInt32BE(4),
      plain,
      data: packed.length < length ? packed : plain,
    };
  });
  const padded = (bytes: number) => (bytes + 3) & ~3;
  const head = Buffer.alloc(headerBytes + count * entryBytes);
  let offset = head.length;
  for (const [at, { tag, checksum, plain, data }] of tables.entries()) {
    const entry = head.subarray(headerBytes + at * entryBytes);
    tag.copy(entry);
    entry.writeUInt32BE(offset, 4);
    entry.writeUInt32BE(data.length, 8);
    entry.writeUInt32BE(plain.length, 12);
    entry.writeUInt32BE(checksum, 16);
    offset += padded(data.length);
  }
  head.write('wOFF', 0, 'latin1');
  // its flavour is that of the file
  font.copy(head, 4, 0, 4);
  head.writeUInt32BE(offset, 8);
  head.writeUInt16BE(count, 12);
  const plainBytes = tables.reduce((sum, { plain }) => sum + padded(plain.length), 12 + count * tableBytes);
  head.writeUInt32BE(plainBytes, 16);
  head.writeUInt16BE(1, 20);
  const body = tables.map(({ data }) =>
    Buffer.concat([data, Buffer.alloc(padded(data.length) - data.length)]),
  );
  return Buffer.concat([head, ...body]);
}
