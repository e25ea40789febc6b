import { openSections } from './sections.ts';

export const LAND_MAGIC = 'NFLM';
export const LAND_VERSION = 1;
export const LAND_HEADER_BYTES = 8;

/**
 * One bit for each cell of a grid of latitude and longitude, 1 for land. Rows from south to north, columns from
 * 180° W to 180° E; lakes are land, the Caspian is sea, and so is all outside the rows.
 */
export type LandMask = {
  readonly cellsPerDegree: number;
  readonly southDeg: number;
  readonly rows: number;
  readonly bits: Uint8Array;
};

/**
 * Opens the asset, gzipped or not; throws when it is of another kind or version. Sections: header (cells per
 * degree, southern edge in degrees, rows; int16 each), and the rows as bits, lowest first, each combined
 * by exclusive or with the row to its south (coasts run on, so this compresses better).
 */
export function openLandMask(bytes: Uint8Array): LandMask {
  const [header, changes] = openSections(bytes, LAND_MAGIC, LAND_VERSION);
  const view = new DataView(header.buffer, header.byteOffset, header.byteLength);
  const cellsPerDegree = view.getInt16(0, true);
  const rowBytes = landRowBytes(cellsPerDegree);
  const bits = changes.slice();
  for (let i = rowBytes; i < bits.length; i++) bits[i] ^= bits[i - rowBytes];
  return { cellsPerDegree, southDeg: view.getInt16(2, true), rows: view.getInt16(4, true), bits };
}

export function landRowBytes(cellsPerDegree: number): number {
  return (360 * cellsPerDegree) / 8;
}

/** The number of the cell's bit, or null outside the rows. Longitudes a full turn apart are the same. */
export function landCell(
  mask: Pick<LandMask, 'cellsPerDegree' | 'southDeg' | 'rows'>,
  latitudeDeg: number,
  longitudeDeg: number,
): number | null {
  const columns = 360 * mask.cellsPerDegree;
  const row = Math.floor((latitudeDeg - mask.southDeg) * mask.cellsPerDegree);
  if (row < 0 || row >= mask.rows) return null;
  const column = Math.floor((longitudeDeg + 180) * mask.cellsPerDegree) % columns;
  return row * columns + (column < 0 ? column + columns : column);
}

/** Whether a point lies in a cell with land. Throws a RangeError when it is no point on Earth. */
export function isLand(mask: LandMask, latitudeDeg: number, longitudeDeg: number): boolean {
  if (!(Math.abs(latitudeDeg) <= 90) || !Number.isFinite(longitudeDeg)) {
    throw new RangeError(
      `point ${latitudeDeg}, ${longitudeDeg}: a latitude of −90…90 and a longitude were expected`,
    );
  }
  const cell = landCell(mask, latitudeDeg, longitudeDeg);
  return cell !== null && ((mask.bits[cell >> 3] >> (cell & 7)) & 1) === 1;
}
