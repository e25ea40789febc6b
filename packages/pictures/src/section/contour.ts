import { px } from '../drawing/path.ts';
import type { Onion, OnionShape } from './onion.ts';

/**
 * A globe onion cut from top to bottom, in units of its radius, the root plate's underside at 0, upwards positive. Drawn
 * after what a halved onion shows; no source.
 */
const globe = { equator: 0.88, shoulder: 1.86, plateHalf: 0.17, plateTop: 0.16 } as const;

/**
 * How other shapes depart from a globe: so many times as tall for their width, widest so many times as high up, and how
 * full they are below (a globe is 1). Drawn after pictures of the catalogue's sources; no figures are published.
 */
const departures: Readonly<Record<OnionShape, { tall: number; equator: number; full: number }>> = {
  flat: { tall: 0.62, equator: 1, full: 1.15 },
  'flattened-globe': { tall: 0.86, equator: 1, full: 1.05 },
  globe: { tall: 1, equator: 1, full: 1 },
  'tall-globe': { tall: 1.15, equator: 1, full: 0.95 },
  top: { tall: 1.1, equator: 1.22, full: 0.55 },
  long: { tall: 2, equator: 1.02, full: 0.5 },
  cluster: { tall: 1, equator: 1, full: 1 },
};

/** Across as drawn, mm: an onion taller than a globe is as much slimmer, so that its volume goes with its mass. */
export function drawnAcrossMm({ acrossMm, shape }: Pick<Onion, 'acrossMm' | 'shape'>): number {
  return acrossMm * departures[shape].tall ** (-1 / 3);
}

/** Heights of a globe as they are in another shape, in radii: the body is stretched, what stands on it is not. */
export function heightIn(shape: OnionShape, height: number): number {
  const { tall } = departures[shape];
  return Math.min(height, globe.shoulder) * tall + Math.max(0, height - globe.shoulder);
}

export type NeckForm = { half: number; top: number };

/** Half width and top of the neck, in radii of the bulb. */
export const necks = {
  closed: { half: 0.1, top: 2.12 },
  thick: { half: 0.36, top: 2.5 },
} as const satisfies Record<string, NeckForm>;

/** Height of a bulb with its neck, mm. */
export function bulbHeightMm(onion: Pick<Onion, 'acrossMm' | 'shape'>, neck: NeckForm): number {
  return (drawnAcrossMm(onion) / 2) * heightIn(onion.shape, neck.top);
}

/**
 * Outline of the scale that reaches `share` (0…1) of the bulb's radius: it starts on the root plate, is widest at the
 * equator and runs up into the neck. Closed path around (x, baseY), y downwards.
 */
export function scaleContour(
  x: number,
  baseY: number,
  radius: number,
  share: number,
  neck: NeckForm,
  shape: OnionShape = 'globe',
): string {
  const at = (u: number, v: number) => `${px(x + u * radius)} ${px(baseY - heightIn(shape, v) * radius)}`;
  const { full, ...departure } = departures[shape];
  const foot = globe.plateTop * (1 - share);
  const plate = globe.plateHalf * (0.35 + 0.65 * share);
  const half = neck.half * (0.15 + 0.85 * share);
  // inner scales are a little longer than wide
  const equator = globe.equator * departure.equator + 0.1 * (1 - share);
  const side = (s: 1 | -1) => ({
    foot: at(s * plate, foot),
    low: at(s * Math.max(plate, share * Math.min(0.8, 0.7 * full)), foot + 0.01),
    lowSide: at(s * share, foot + (equator - foot) * 0.42),
    wide: at(s * share, equator),
    highSide: at(s * share, equator + 0.5),
    shoulder: at(s * (half + 0.16 * share), globe.shoulder - 0.3),
    neck: at(s * half, globe.shoulder),
    tip: at(s * half * 0.85, neck.top),
  });
  const r = side(1);
  const l = side(-1);
  return (
    `M${r.foot}C${r.low} ${r.lowSide} ${r.wide}C${r.highSide} ${r.shoulder} ${r.neck}L${r.tip}` +
    `L${l.tip}L${l.neck}C${l.shoulder} ${l.highSide} ${l.wide}C${l.lowSide} ${l.low} ${l.foot}Z`
  );
}

/** Share of the radius taken by the heart, from which the next year's leaves would come. */
export const heartShare = 0.13;
/** A dry skin, mm. */
const skinMm = 0.45;

/** Share of the radius at which each ring ends outside, from the outside in, the heart last; and those of the skins. */
export function ringShares(
  ringLeaves: readonly number[],
  skins: number,
  radiusMm: number,
): { skins: number[]; rings: number[] } {
  const perSkin = Math.min(skinMm / radiusMm, 0.05);
  const flesh = 1 - perSkin * skins - heartShare;
  const total = ringLeaves.reduce((sum, leaf) => sum + leaf, 0);
  const rings: number[] = [];
  let outer = 1 - perSkin * skins;
  for (const leaf of ringLeaves) {
    rings.push(outer);
    outer -= (leaf / total) * flesh;
  }
  return { skins: Array.from({ length: skins }, (_, i) => 1 - i * perSkin), rings: [...rings, heartShare] };
}
