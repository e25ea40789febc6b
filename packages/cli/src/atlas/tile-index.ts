/** Where tiles stand in a file: a few bytes a tile, however large the map. Offsets and lengths in bytes. */
export type TileIndex = {
  count: () => number;
  has: (tile: number) => boolean;
  at: (tile: number) => { offset: number; length: number };
  put: (tile: number, offset: number, length: number) => void;
};

export function tileIndex(tiles: number): TileIndex {
  const offsets = new Float64Array(tiles).fill(-1);
  const lengths = new Uint32Array(tiles);
  let count = 0;
  return {
    count: () => count,
    has: (tile) => offsets[tile] >= 0,
    at: (tile) => ({ offset: offsets[tile], length: lengths[tile] }),
    put(tile, offset, length) {
      // a tile that two runs wrote is the same in both
      if (offsets[tile] !== -1) return;
      offsets[tile] = offset;
      lengths[tile] = length;
      count++;
    },
  };
}
