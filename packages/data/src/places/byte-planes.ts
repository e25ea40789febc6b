/**
 * Unsigned integers stored as planes of bytes, lowest first: all low bytes, then all next bytes, … The high
 * planes hardly vary, so they compress to almost nothing; a value is read in place, nothing is unpacked.
 */
export function packPlanes(values: readonly number[], planes: number): Uint8Array {
  const bytes = new Uint8Array(values.length * planes);
  values.forEach((value, row) => {
    if (!Number.isInteger(value) || value < 0 || value >= 256 ** planes) {
      throw new RangeError(`value ${value} in row ${row} does not fit ${planes} unsigned bytes`);
    }
    let rest = value;
    for (let plane = 0; plane < planes; plane++) {
      bytes[plane * values.length + row] = rest % 256;
      rest = Math.floor(rest / 256);
    }
  });
  return bytes;
}

export function readPlanes(bytes: Uint8Array, rows: number, row: number): number {
  let value = 0;
  for (let at = bytes.length - rows + row; at >= 0; at -= rows) value = value * 256 + bytes[at];
  return value;
}
