import { type DayLengthClass, dayLengthClasses } from '@neckfall/engine';
import { type AtlasPoint, atlasGround } from './atlas-bands.ts';

/** Where kinds change places on one half of the Earth, degrees from the equator; null where no line parts them. */
export type AtlasBorders = {
  /** From here to the pole long-day onions lead on most of the ground. */
  longFromDeg: number | null;
  /** From the equator to here short-day onions do. */
  shortToDeg: number | null;
};

/** Rows of points are taken together by so much, degrees. */
const stripDeg = 2;
/** A line must part so much of the ground rightly, 0…1. */
const leastRight = 0.85;

type Strip = { deg: number; area: number; shares: Readonly<Record<DayLengthClass, number>> };

/** @param points of one half of the Earth */
export function atlasBorders(points: readonly AtlasPoint[]): AtlasBorders {
  const byStrip = new Map<number, AtlasPoint[]>();
  for (const point of points) {
    const strip = Math.floor(Math.abs(point.latitudeDeg) / stripDeg);
    const held = byStrip.get(strip);
    if (held) held.push(point);
    else byStrip.set(strip, [point]);
  }
  const strips = [...byStrip]
    .sort(([a], [b]) => a - b)
    .map(([strip, held]): Strip => {
      const { bareShare, classShares } = atlasGround(held);
      const deg = strip * stripDeg;
      const area = held.length * (1 - bareShare) * Math.cos((deg * Math.PI) / 180);
      return { deg, area, shares: classShares };
    })
    .filter(({ area }) => area > 0);
  return { longFromDeg: parting(strips, 'long', 1), shortToDeg: parting(strips, 'short', -1) };
}

/** The line beyond which a class leads and before which others do, as nearly as one line can tell. */
function parting(strips: readonly Strip[], kind: DayLengthClass, side: 1 | -1): number | null {
  const all = strips.reduce((sum, { area }) => sum + area, 0);
  let [best, most] = [-1, 0];
  for (let at = 1; at < strips.length; at++) {
    const right = strips.reduce((sum, { area, shares }, strip) => {
      const isBeyond = side > 0 ? strip >= at : strip < at;
      return sum + area * (isBeyond ? shares[kind] : 1 - shares[kind]);
    }, 0);
    if (right > most) [best, most] = [at, right];
  }
  if (best < 0 || most < leastRight * all) return null;
  const [before, after] = [strips.slice(0, best), strips.slice(best)];
  const [beyond, rest] = side > 0 ? [after, before] : [before, after];
  return leads(beyond, kind) && !leads(rest, kind) ? strips[best].deg : null;
}

function leads(strips: readonly Strip[], kind: DayLengthClass): boolean {
  const areaOf = (name: DayLengthClass) =>
    strips.reduce((sum, { area, shares }) => sum + area * shares[name], 0);
  return dayLengthClasses.every((other) => other === kind || areaOf(other) < areaOf(kind));
}
