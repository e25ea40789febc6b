import { px } from '../drawing/path.ts';
import type { Spot } from './store-layout.ts';

/** How the lots are told apart: by outline and by what is drawn on the skin. Sizes in bulbs. */
const bulbShapes = ['round', 'tall', 'flat', 'pointed'] as const;
export type BulbShape = (typeof bulbShapes)[number];

export function shapeOfLot(lot: number): BulbShape {
  return bulbShapes[lot % bulbShapes.length];
}

const halves: Readonly<Record<BulbShape, readonly [across: number, down: number]>> = {
  round: [0.4, 0.4],
  tall: [0.28, 0.46],
  flat: [0.46, 0.27],
  pointed: [0.42, 0.44],
};

/** Outlines of many bulbs as one path. */
export function bulbsPath(spots: readonly Spot[], shape: BulbShape, size: number): string {
  const [across, down] = halves[shape].map((half) => half * size);
  return spots
    .map(({ x, y }) =>
      shape === 'pointed'
        ? `M${px(x - across)} ${px(y)}L${px(x)} ${px(y - down)}L${px(x + across)} ${px(y)}L${px(x)} ${px(y + down)}Z`
        : `M${px(x - across)} ${px(y)}a${px(across)} ${px(down)} 0 1 0 ${px(2 * across)} 0a${px(across)} ${px(down)} 0 1 0 ${px(-2 * across)} 0Z`,
    )
    .join('');
}

/** What is drawn on the skins of a shape: nothing, a line from neck to root, a line around, a cross. Sizes in bulbs. */
const marks: Readonly<Record<BulbShape, readonly [across: number, down: number]>> = {
  round: [0, 0],
  tall: [0, 0.84],
  flat: [0.84, 0],
  pointed: [0.4, 0.4],
};

export function marksPath(spots: readonly Spot[], shape: BulbShape, size: number): string {
  const [across, down] = marks[shape].map((length) => length * size);
  return spots
    .map(
      ({ x, y }) =>
        (across > 0 ? `M${px(x - across / 2)} ${px(y)}h${px(across)}` : '') +
        (down > 0 ? `M${px(x)} ${px(y - down / 2)}v${px(down)}` : ''),
    )
    .join('');
}

/** Specks on bulbs that were lost. */
export function specksPath(spots: readonly Spot[], size: number): string {
  const specks = [
    [-0.16, -0.12],
    [0.16, -0.1],
    [0, 0.16],
  ] as const;
  return spots
    .flatMap(({ x, y }) => specks.map(([dx, dy]) => `M${px(x + dx * size)} ${px(y + dy * size)}h0.01`))
    .join('');
}
