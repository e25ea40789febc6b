import { gunzipSync } from 'fflate';

/**
 * Our asset container: four magic letters, version (1 byte), number of sections (1 byte), the byte length
 * of each section (uint32, little-endian), then the sections one after the other. Shipped gzipped.
 */
const FIXED_HEADER_BYTES = 6;

export function packSections(magic: string, version: number, sections: readonly Uint8Array[]): Uint8Array {
  const header = FIXED_HEADER_BYTES + 4 * sections.length;
  const bytes = new Uint8Array(sections.reduce((sum, section) => sum + section.length, header));
  const view = new DataView(bytes.buffer);
  for (let i = 0; i < 4; i++) bytes[i] = magic.charCodeAt(i);
  bytes[4] = version;
  bytes[5] = sections.length;
  let at = header;
  sections.forEach((section, i) => {
    view.setUint32(FIXED_HEADER_BYTES + 4 * i, section.length, true);
    bytes.set(section, at);
    at += section.length;
  });
  return bytes;
}

/** The sections of an asset, gzipped or not, without copying. Throws when it is not the asset expected. */
export function openSections(bytes: Uint8Array, magic: string, version: number): Uint8Array[] {
  const isGzip = bytes[0] === 0x1f && bytes[1] === 0x8b;
  const raw = isGzip ? gunzipSync(bytes) : bytes;
  const found = String.fromCharCode(...raw.subarray(0, 4));
  if (found !== magic) {
    throw new Error(
      `asset: starts with ${JSON.stringify(found)} where ${magic} was expected; it is not this kind of asset`,
    );
  }
  if (raw[4] !== version) {
    throw new Error(
      `asset ${magic}: version ${raw[4]}, but this program reads version ${version}; build the assets again`,
    );
  }
  const count = raw[5];
  const header = FIXED_HEADER_BYTES + 4 * count;
  const view = new DataView(raw.buffer, raw.byteOffset, raw.byteLength);
  const sections: Uint8Array[] = [];
  let at = header;
  for (let i = 0; i < count && raw.length >= header; i++) {
    const length = view.getUint32(FIXED_HEADER_BYTES + 4 * i, true);
    sections.push(raw.subarray(at, at + length));
    at += length;
  }
  if (at !== raw.length || sections.length !== count) {
    throw new Error(`asset ${magic}: ${raw.length} bytes where ${at} were expected; the file is damaged`);
  }
  return sections;
}
