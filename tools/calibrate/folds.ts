/** How many parts the places are cut into for cross-validation. */
export const foldCount = 10;

/** Places within a cell of this size are left out together, degrees. */
const cellDeg = 2;

/**
 * Fold 0…9 of a place: cells of two degrees, dealt out by a hash of the cell, so that trials of one district never
 * stand on both sides and adding a row moves no other row.
 */
export function foldOf(latitudeDeg: number, longitudeDeg: number): number {
  const row = Math.floor((latitudeDeg + 90) / cellDeg);
  const column = Math.floor((longitudeDeg + 180) / cellDeg);
  let hash = Math.imul(row + 1, 0x9e3779b1) ^ Math.imul(column + 1, 0x85ebca6b);
  hash = Math.imul(hash ^ (hash >>> 15), 0x2c1b3c6d);
  hash = Math.imul(hash ^ (hash >>> 12), 0x297a2d39);
  return ((hash ^ (hash >>> 15)) >>> 0) % foldCount;
}
