import type { DayLengthClass } from '@neckfall/engine';
import { type AtlasPoint, atlasGround } from './atlas-bands.ts';

/** Where kinds change places on one half of the Earth, degrees from the equator; null where they do not. */
export type AtlasBorders = {
  /** From here to the pole long-day onions lead on most of the ground. */
  longFromDeg: number | null;
  /** From the equator to here short-day onions do. */
  shortToDeg: number | null;
};

/** Rows of points are taken together by so much, degrees. */
const stripDeg = 2;

/** @param points of one half of the Earth */
export function atlasBorders(points: readonly AtlasPoint[]): AtlasBorders {
  const strips = new Map<number, AtlasPoint[]>();
  for (const point of points) {
    const strip = Math.floor(Math.abs(point.latitudeDeg) / stripDeg);
    const held = strips.get(strip);
    if (held) held.push(point);
    else strips.set(strip, [point]);
  }
  // from the equator on; where nothing grows, nothing changes places
  const leaders = [...strips]
    .sort(([a], [b]) => a - b)
    .map(([strip, held]) => ({ strip, ...atlasGround(held) }))
    .filter(({ bareShare }) => bareShare < 1)
    .map(({ strip, classShares }) => ({ strip, leads: leaderOf(classShares) }));
  const others = (kind: DayLengthClass) => (strip: { leads: DayLengthClass | null }) => strip.leads !== kind;
  const lastOther = leaders.findLastIndex(others('long'));
  const firstOther = leaders.findIndex(others('short'));
  return {
    longFromDeg:
      lastOther >= 0 && lastOther < leaders.length - 1 ? leaders[lastOther + 1].strip * stripDeg : null,
    shortToDeg: firstOther > 0 ? leaders[firstOther].strip * stripDeg : null,
  };
}

/** The class that leads on more than half of the ground. */
function leaderOf(shares: Readonly<Record<DayLengthClass, number>>): DayLengthClass | null {
  const found = (['short', 'intermediate', 'long'] as const).find((kind) => shares[kind] > 0.5);
  return found ?? null;
}
