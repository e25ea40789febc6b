import { closeSync, fstatSync, ftruncateSync, openSync, readSync } from 'node:fs';
import { refusing } from '../output/out-refusal.ts';
import { writeAll } from '../output/whole-file.ts';
import { type RefusalCode, refuse } from '../refusal/refusal.ts';
import { version } from '../version.ts';
import { linesOf } from './lines-of.ts';
import { sealed, unsealed } from './sealed.ts';
import type { AtlasSettings } from './settings.ts';
import { type TileIndex, tileIndex } from './tile-index.ts';
import type { Tile } from './tile-maker.ts';
import { tilesOf } from './tiles.ts';

/**
 * Tiles as they are worked out, in a file that only grows: a line each, led by its checksum. Whatever kills the run, what
 * was written stands, and a line torn off at the end is known by its sum.
 */
export type Part = {
  settings: AtlasSettings;
  has: (tile: number) => boolean;
  /** Tiles that are there. */
  count: () => number;
  /** @throws Refusal where the file was changed meanwhile */
  read: (tile: number) => Tile;
  close: () => void;
};

export type GrowingPart = Part & { add: (tile: Tile) => void };

const schema = 'neckfall/atlas-part@1';
type Head = { schema: typeof schema; engine: string; settings: AtlasSettings };

/** A part to read. @throws Refusal where there is none, or one of another version */
export function openPart(path: string): Part {
  const refusal = (code: RefusalCode, values = {}) =>
    refuse(code, { values: { value: path, ...values }, exit: 3 });
  let file: number;
  try {
    file = openSync(path, 'r');
  } catch (error) {
    const reason = (error as NodeJS.ErrnoException).code ?? String(error);
    throw refusal('map-part-missing', { reason });
  }
  const found = lookThrough(file);
  if (found.head?.engine === version) return partOf(path, file, found.head.settings, found.index);
  closeSync(file);
  throw found.head
    ? refusal('map-part-engine', { engine: found.head.engine, own: version })
    : refusal('map-part-none');
}

/**
 * A part to go on with, or a new one.
 * @throws Refusal where the file there is no part, or one of another map, which stays as it is
 */
export function growPart(path: string, settings: AtlasSettings): GrowingPart {
  const file = refusing(path, () => openSync(path, 'a+'));
  const size = () => fstatSync(file).size;
  const append = (value: object) =>
    refusing(path, () => {
      const line = `${sealed(value)}\n`;
      const offset = size();
      writeAll(file, line);
      return { offset, length: Buffer.byteLength(line) };
    });
  if (size() === 0) append({ schema, engine: version, settings } satisfies Head);
  const { head, index, whole } = lookThrough(file);
  const isOwn = head?.engine === version && JSON.stringify(head.settings) === JSON.stringify(settings);
  if (!isOwn) {
    closeSync(file);
    throw refuse(head ? 'map-part-other' : 'map-part-none', { values: { value: path }, exit: 3 });
  }
  // the line that was being written when the run was killed
  if (whole < size()) ftruncateSync(file, whole);
  return {
    ...partOf(path, file, settings, index),
    add(tile) {
      const { offset, length } = append(tile);
      index.put(tile.tile, offset, length);
    },
  };
}

function partOf(path: string, file: number, settings: AtlasSettings, index: TileIndex): Part {
  return {
    settings,
    has: index.has,
    count: index.count,
    read(tile) {
      const { offset, length } = index.at(tile);
      const bytes = Buffer.alloc(length);
      readSync(file, bytes, 0, length, offset);
      const found = unsealed(bytes.toString('utf8', 0, length - 1)) as Tile | null;
      if (!found) throw refuse('map-part-changed', { values: { value: path }, exit: 3 });
      return found;
    },
    close: () => closeSync(file),
  };
}

/** What an open file holds up to the first line that is not whole; a head of null: it is no part. */
function lookThrough(file: number): { head: Head | null; index: TileIndex; whole: number } {
  let head: Head | null = null;
  let index = tileIndex(0);
  let whole = 0;
  for (const { text, offset, length, isEnded } of linesOf(file)) {
    const found = isEnded ? (unsealed(text) as Head | Tile | null) : null;
    if (!found) break;
    if ('tile' in found) index.put(found.tile, offset, length);
    else if (head === null && found.schema === schema) {
      head = found;
      index = tileIndex(tilesOf(head.settings).count);
    } else break;
    whole = offset + length;
  }
  return { head, index, whole };
}
