import { px } from '../path.ts';

/**
 * Shape of a globe onion cut from top to bottom, in units of its radius, the root plate's underside at 0, upwards
 * positive. Drawn after what a halved onion shows; no source.
 */
const shape = { equator: 0.88, shoulder: 1.86, plateHalf: 0.17, plateTop: 0.16 } as const;

export type NeckForm = { half: number; top: number };

/** Half width and top of the neck, in radii of the bulb. */
export const necks = {
  closed: { half: 0.1, top: 2.12 },
  thick: { half: 0.36, top: 2.5 },
} as const satisfies Record<string, NeckForm>;

/** Height of a bulb with its neck, mm. */
export function bulbHeightMm(acrossMm: number, neck: NeckForm): number {
  return (acrossMm / 2) * neck.top;
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
): string {
  const at = (u: number, v: number) => `${px(x + u * radius)} ${px(baseY - v * radius)}`;
  const foot = shape.plateTop * (1 - share);
  const plate = shape.plateHalf * (0.35 + 0.65 * share);
  const half = neck.half * (0.15 + 0.85 * share);
  // inner scales are a little longer than wide
  const equator = shape.equator + 0.1 * (1 - share);
  const side = (s: 1 | -1) => ({
    foot: at(s * plate, foot),
    low: at(s * Math.max(plate, share * 0.7), foot + 0.01),
    lowSide: at(s * share, foot + (equator - foot) * 0.42),
    wide: at(s * share, equator),
    highSide: at(s * share, equator + 0.5),
    shoulder: at(s * (half + 0.16 * share), shape.shoulder - 0.3),
    neck: at(s * half, shape.shoulder),
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
