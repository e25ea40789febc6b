import {
  type AtlasAsked,
  type AtlasEntry,
  civilDate,
  type DayNumber,
  dayNumber,
  engineVersion,
  type GridPoint,
  gridPoints,
  type Region,
} from '@neckfall/engine';
import type { MapPoint } from '@neckfall/pictures';
import { type AtlasBatch, type AtlasShelf, openAtlasShelf } from '../../device/atlas-shelf.ts';
import { perPoint, unpackLead } from '../../worker/atlas-pack.ts';

/** Weather years tried at each point, and what the invented ones begin with: fewer years than a place is told from. */
export const mapYears = 10;
export const mapSeed = 1;

/** Points of maps whose answers are known, for as long as the page stands; the device keeps them longer. */
export type AtlasHeld = {
  from: DayNumber;
  has: (point: GridPoint) => boolean;
  /** Packed entries; null where nothing can be grown, undefined where it is not known. */
  get: (point: GridPoint) => Float32Array | null | undefined;
  add: (batch: AtlasBatch) => void;
  /** Brings in what the device keeps. */
  ready: Promise<void>;
};

let held: AtlasHeld | null = null;

/** @param today answers are kept for starts from the next New Year on, so that they hold for as long as a year */
export function atlasHeld(today: DayNumber): AtlasHeld {
  const from = dayNumber(civilDate(today).year + 1, 1, 1);
  if (held?.from !== from) held = openHeld(from);
  return held;
}

function openHeld(from: DayNumber): AtlasHeld {
  const known = new Map<number, Float32Array | null>();
  // the name of this file in a build changes with all that answers rest on
  const answers = [engineVersion, mapYears, mapSeed, from, new URL(import.meta.url).pathname].join(' ');
  const shelf: AtlasShelf = openAtlasShelf(answers);
  const take = ({ points, packed, nothing }: AtlasBatch) => {
    for (let at = 0; at < points.length / 2; at++) {
      const one = packed.subarray(at * perPoint, (at + 1) * perPoint);
      known.set(keyOf(points[2 * at], points[2 * at + 1]), one);
    }
    for (let at = 0; at < nothing.length; at += 2) known.set(keyOf(nothing[at], nothing[at + 1]), null);
  };
  return {
    from,
    has: ({ latitudeDeg, longitudeDeg }) => known.has(keyOf(latitudeDeg, longitudeDeg)),
    get: ({ latitudeDeg, longitudeDeg }) => known.get(keyOf(latitudeDeg, longitudeDeg)),
    add(batch) {
      take(batch);
      void shelf.keep(batch);
    },
    ready: shelf.each(take),
  };
}

/** A number for a point, to a thousandth of a degree. */
const keyOf = (latitudeDeg: number, longitudeDeg: number) =>
  Math.round((latitudeDeg + 90) * 1000) * 360_001 + Math.round((longitudeDeg + 180) * 1000);

/** What leads at points among those asked for; each is looked up once. */
export function leadsOf({ get, from }: AtlasHeld, among: AtlasAsked) {
  const found = new WeakMap<Float32Array, AtlasEntry>();
  const leadAt = (point: GridPoint): MapPoint | null => {
    const packed = get(point);
    if (!packed) return null;
    const entry = found.get(packed) ?? unpackLead(packed, from, among);
    found.set(packed, entry);
    return { ...point, entry };
  };
  return {
    leadAt,
    /** Those of a grid that are known. */
    leadsOn: (region: Region, stepDeg: number) =>
      [...gridPoints(region, stepDeg)].flatMap((point) => leadAt(point) ?? []),
  };
}
