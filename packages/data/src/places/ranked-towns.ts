import { readPlanes } from './byte-planes.ts';
import { type Gazetteer, type GazetteerPart, populationAt } from './gazetteer.ts';
import type { KeyTable } from './key-table.ts';

/**
 * A spelling unlike the town's own name counts with a twentieth of its people: so Bombay is Mumbai, but Hudson
 * is a town called Hudson before it is an old name of Jersey City. Our own choice.
 */
const FAR_SPELLING_SHARE = 1 / 20;

/** A town found by one of its names: nearer (fewer edits, or a whole name) first, then by weight. */
export type RankedTown = { readonly town: number; readonly distance: number; readonly weight: number };

export type NameTable = {
  readonly keys: KeyTable;
  readonly townOf: (row: number) => number;
  readonly weightOf: (row: number) => number;
};

/** The tables of own names and of other spellings in every part. */
export function nameTables(gazetteer: Gazetteer): NameTable[] {
  return gazetteer.parts.flatMap((part) => [ownNames(part), otherSpellings(part)]);
}

function ownNames(part: GazetteerPart): NameTable {
  return {
    keys: part.keys,
    townOf: (row) => part.firstTown + row,
    weightOf: (row) => populationAt(part, row),
  };
}

function otherSpellings(part: GazetteerPart): NameTable {
  const rowOf = (row: number) => readPlanes(part.otherKeyTown, part.otherKeys.count, row);
  return {
    keys: part.otherKeys,
    townOf: (row) => part.firstTown + rowOf(row),
    weightOf: (row) =>
      populationAt(part, rowOf(row)) * (part.otherKeyIsFar[row] === 1 ? FAR_SPELLING_SHARE : 1),
  };
}

export function compareRank(a: RankedTown, b: RankedTown): number {
  return a.distance - b.distance || b.weight - a.weight || a.town - b.town;
}

/** Keeps the best `limit` different towns of those offered, best first. */
export function rankedTowns(limit: number): { offer: (candidate: RankedTown) => void; best: RankedTown[] } {
  const best: RankedTown[] = [];
  const offer = (candidate: RankedTown) => {
    if (best.length === limit && compareRank(candidate, best[limit - 1]) >= 0) return;
    const same = best.findIndex((kept) => kept.town === candidate.town);
    if (same >= 0) {
      if (compareRank(candidate, best[same]) >= 0) return;
      best.splice(same, 1);
    }
    const at = best.findIndex((kept) => compareRank(candidate, kept) < 0);
    best.splice(at < 0 ? best.length : at, 0, candidate);
    if (best.length > limit) best.pop();
  };
  return { offer, best };
}
