import {
  type AtlasFigures,
  civilDate,
  type DayLengthClass,
  type DayNumber,
  dayLengthClasses,
  type GridPoint,
} from '@neckfall/engine';
import { isBareGround } from './bare-ground.ts';

/** A point of a map with the entry that leads there among those asked for. */
export type AtlasPoint = GridPoint & { entry: AtlasFigures };

/** What onions do on the ground of some points; shares of ground by area, 0…1. */
export type AtlasGround = {
  points: number;
  /** Where good bulbs come in hardly any year. */
  bareShare: number;
  /** Of the ground that is not bare, where each class leads. */
  classShares: Readonly<Record<DayLengthClass, number>>;
  /** Good seasons, mean over all the ground, 0…1. */
  goodShare: number;
  /** Commonest months of the best start and of tops over where it is not bare, 1…12; null where there is none. */
  startMonth: number | null;
  topsMonth: number | null;
  /** Mean where a bulb forms and it is not bare, mm. */
  bulbDiameterMm: number | null;
};

/** A band of latitude, degrees, with its ground. */
export type AtlasBand = AtlasGround & { southDeg: number; northDeg: number };

/** From one band to the next, degrees. */
const bandDeg = 10;

/** The ground of all points together. Points of a grid stand for less ground the nearer they lie to a pole. */
export function atlasGround(points: readonly AtlasPoint[]): AtlasGround {
  let [all, good, bare, bulbs, bulbMm] = [0, 0, 0, 0, 0];
  const classes: Record<DayLengthClass, number> = { short: 0, intermediate: 0, long: 0 };
  const starts = new Array<number>(12).fill(0);
  const tops = new Array<number>(12).fill(0);
  for (const { latitudeDeg, entry } of points) {
    const area = Math.cos((latitudeDeg * Math.PI) / 180);
    all += area;
    good += area * entry.goodShare;
    if (isBareGround(entry)) {
      bare += area;
      continue;
    }
    classes[entry.class] += area;
    starts[monthOf(entry.startDay) - 1] += area;
    if (entry.neckFallDay !== null) tops[monthOf(entry.neckFallDay) - 1] += area;
    if (entry.bulbDiameterMm !== null) {
      bulbs += area;
      bulbMm += area * entry.bulbDiameterMm;
    }
  }
  const planted = all - bare;
  const shares = dayLengthClasses.map((name) => [name, planted > 0 ? classes[name] / planted : 0]);
  return {
    points: points.length,
    bareShare: all > 0 ? bare / all : 0,
    classShares: Object.fromEntries(shares) as Record<DayLengthClass, number>,
    goodShare: all > 0 ? good / all : 0,
    startMonth: commonest(starts),
    topsMonth: commonest(tops),
    bulbDiameterMm: bulbs > 0 ? bulbMm / bulbs : null,
  };
}

/** The same by bands of latitude, from north to south; bands without a point are left out. */
export function atlasBands(points: readonly AtlasPoint[]): AtlasBand[] {
  const byBand = new Map<number, AtlasPoint[]>();
  for (const point of points) {
    const band = Math.floor(point.latitudeDeg / bandDeg);
    const held = byBand.get(band);
    if (held) held.push(point);
    else byBand.set(band, [point]);
  }
  return [...byBand]
    .sort(([a], [b]) => b - a)
    .map(([band, held]) => ({
      southDeg: band * bandDeg,
      northDeg: (band + 1) * bandDeg,
      ...atlasGround(held),
    }));
}

const monthOf = (day: DayNumber) => civilDate(Math.round(day)).month;

function commonest(months: readonly number[]): number | null {
  const most = Math.max(...months);
  return most > 0 ? months.indexOf(most) + 1 : null;
}
