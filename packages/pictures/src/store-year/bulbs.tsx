import { ink } from '../drawing/ink.ts';
import { type BulbShape, bulbsPath, marksPath, specksPath } from './bulb-paths.ts';
import type { Spot } from './store-layout.ts';

const fills: Readonly<Record<BulbShape, string>> = {
  round: ink.skin,
  tall: ink.skin2,
  flat: ink.sky,
  pointed: ink.earth,
};

/** Sound bulbs of a lot. */
export function Bulbs({ spots, shape, bulb }: { spots: readonly Spot[]; shape: BulbShape; bulb: number }) {
  if (spots.length === 0) return null;
  return (
    <>
      <path d={bulbsPath(spots, shape, bulb)} fill={fills[shape]} stroke={ink.ink} stroke-width={0.8} />
      {shape !== 'round' && (
        <path
          d={marksPath(spots, shape, bulb)}
          stroke={shape === 'tall' ? ink.ink : ink.paper}
          stroke-width={1.4}
        />
      )}
    </>
  );
}

export function Eaten({ spots, bulb }: { spots: readonly Spot[]; bulb: number }) {
  if (spots.length === 0) return null;
  return (
    <path d={bulbsPath(spots, 'round', bulb * 0.9)} fill={ink.paper} stroke={ink.ink2} stroke-width={0.9} />
  );
}

export function Lost({ spots, bulb }: { spots: readonly Spot[]; bulb: number }) {
  if (spots.length === 0) return null;
  return (
    <>
      <path
        d={bulbsPath(spots, 'round', bulb * 0.9)}
        fill={ink.paper2}
        stroke={ink.alarm}
        stroke-width={0.9}
        stroke-dasharray="2 1.5"
      />
      <path
        d={specksPath(spots, bulb)}
        stroke={ink.alarm}
        stroke-width={Math.max(1.6, bulb * 0.16)}
        stroke-linecap="round"
      />
    </>
  );
}
