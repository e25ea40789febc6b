/**
 * Folded names in ascending order, as ASCII bytes end to end. `shared[row]` is the number of leading bytes a
 * name has in common with the one before it: the sorted list is then also a tree of letters that can be
 * walked without building it.
 */
export type KeyTable = {
  readonly count: number;
  readonly bytes: Uint8Array;
  readonly offsets: Uint32Array;
  readonly shared: Uint8Array;
  readonly longest: number;
};

export const KEY_TABLE_SECTIONS = 3;

/** Sections: bytes shared with the name before, bytes of its own, and those bytes. */
export function packKeys(sortedKeys: readonly string[]): Uint8Array[] {
  const shared = new Uint8Array(sortedKeys.length);
  const ownLength = new Uint8Array(sortedKeys.length);
  let tails = '';
  let before = '';
  sortedKeys.forEach((key, row) => {
    if (!/^[a-z0-9 ]{1,255}$/.test(key) || key < before) {
      throw new Error(`key ${JSON.stringify(key)}: not folded ASCII of 1 to 255 letters, or out of order`);
    }
    let common = 0;
    while (common < before.length && before[common] === key[common]) common++;
    shared[row] = common;
    ownLength[row] = key.length - common;
    tails += key.slice(common);
    before = key;
  });
  return [shared, ownLength, new TextEncoder().encode(tails)];
}

export function openKeys([shared, ownLength, tails]: readonly Uint8Array[]): KeyTable {
  const count = shared.length;
  const offsets = new Uint32Array(count + 1);
  let longest = 0;
  for (let row = 0; row < count; row++) {
    const length = shared[row] + ownLength[row];
    offsets[row + 1] = offsets[row] + length;
    if (length > longest) longest = length;
  }
  const bytes = new Uint8Array(offsets[count]);
  let tail = 0;
  for (let row = 0; row < count; row++) {
    let to = offsets[row];
    const end = offsets[row + 1];
    if (row > 0) for (let from = offsets[row - 1], n = shared[row]; n > 0; n--) bytes[to++] = bytes[from++];
    while (to < end) bytes[to++] = tails[tail++];
  }
  return { count, bytes, offsets, shared, longest };
}

export function keyAt(keys: KeyTable, row: number): string {
  return String.fromCharCode(...keys.bytes.subarray(keys.offsets[row], keys.offsets[row + 1]));
}

/** Bytes of a folded name, or null when it has a letter that no key has. */
export function keyBytes(folded: string): Uint8Array | null {
  return /^[a-z0-9 ]+$/.test(folded) ? new TextEncoder().encode(folded) : null;
}

/** < 0 where the key of the row comes before the prefix, 0 where it begins with it, > 0 where it comes after. */
function comparePrefix(keys: KeyTable, row: number, prefix: Uint8Array): number {
  const start = keys.offsets[row];
  const length = keys.offsets[row + 1] - start;
  for (let i = 0; i < prefix.length; i++) {
    if (i === length) return -1;
    const difference = keys.bytes[start + i] - prefix[i];
    if (difference !== 0) return difference;
  }
  return 0;
}

function firstRow(count: number, isPast: (row: number) => boolean): number {
  let low = 0;
  let high = count;
  while (low < high) {
    const middle = (low + high) >>> 1;
    if (isPast(middle)) high = middle;
    else low = middle + 1;
  }
  return low;
}

/** Rows [from, to) whose keys begin with the prefix; [from, exactTo) are those equal to it. */
export function prefixRows(
  keys: KeyTable,
  prefix: Uint8Array,
): { from: number; exactTo: number; to: number } {
  const from = firstRow(keys.count, (row) => comparePrefix(keys, row, prefix) >= 0);
  const to = firstRow(keys.count, (row) => comparePrefix(keys, row, prefix) > 0);
  let exactTo = from;
  while (exactTo < to && keys.offsets[exactTo + 1] - keys.offsets[exactTo] === prefix.length) exactTo++;
  return { from, exactTo, to };
}
