import type { ComponentChildren } from 'preact';
import { ink } from '../drawing/ink.ts';

/*
 * What the small drawings are made of: a square of 64 by 64, lines of ink, leaves green, earth brown. Drawn after what a
 * grower sees on the plant; no source.
 */

/** Rot and dried tissue, mould, and the red of sick roots and spots: the same by day and by night. */
export const ill = { rot: '#8a5a2b', red: '#b8446c' } as const;

type LinesProps = { d: string; stroke?: string; wide?: number; dashed?: boolean };

/** Lines without a fill. */
export function Lines({ d, stroke = ink.ink, wide = 1.8, dashed = false }: LinesProps) {
  const dashes = dashed ? { 'stroke-dasharray': '3 3' } : {};
  return <path d={d} fill="none" stroke={stroke} stroke-width={wide} {...dashes} />;
}

/** A shape that covers what lies behind it. */
export function Body({ d, fill = ink.paper }: { d: string; fill?: string }) {
  return <path d={d} fill={fill} stroke={ink.ink} stroke-width={1.8} />;
}

export const groundY = 47;

export function Ground() {
  return <Lines d={`M3 ${groundY}H61`} stroke={ink.earth} wide={2.2} />;
}

/** Green blades, each a line of its own. */
export function Leaves({ d, stroke = ink.leaf }: { d: string; stroke?: string }) {
  return <Lines d={d} stroke={stroke} wide={3.4} />;
}

/** A plant that stands as it should, its foot at (x, groundY), so many times as large. */
export function standing(x: number, size: number): string {
  const at = (dx: number, dy: number) => `${x + dx * size} ${groundY - dy * size}`;
  return (
    `M${at(0, 0)}C${at(-1, 14)} ${at(-2, 27)} ${at(-5, 38)}` +
    `M${at(0, 0)}C${at(1, 14)} ${at(3, 25)} ${at(8, 35)}` +
    `M${at(0, 0)}C${at(-4, 9)} ${at(-10, 18)} ${at(-17, 24)}` +
    `M${at(0, 0)}C${at(4, 8)} ${at(11, 15)} ${at(19, 19)}`
  );
}

const bulbBody = 'M30 15C30 22 15 24 15 38C15 48 24 53 32 53C40 53 49 48 49 38C49 24 34 22 34 15Z';
const bulbLines = 'M32 24C24 30 23 45 30 52M32 24C40 30 41 45 34 52';

/** A bulb that hangs dry, with its roots. */
export function Bulb({ roots = true, lines = true }: { roots?: boolean; lines?: boolean }) {
  return (
    <>
      {roots && <Lines d="M28 53q-2 4-4 6M32 53v7M36 53q2 4 4 6" wide={1.4} />}
      <Body d={bulbBody} />
      {lines && <Lines d={bulbLines} wide={1} />}
    </>
  );
}

export const rings = {
  outer: 'M31 20C31 26 20 28 20 38C20 45 26 49 32 49C38 49 44 45 44 38C44 28 33 26 33 20',
  inner: 'M32 27C27 31 25 35 25 39C25 43 28 45.5 32 45.500C36 45.5 39 43 39 39C39 35 37 31 32 27Z',
} as const;

/** A bulb cut from top to bottom. */
export function CutBulb({ children = null }: { children?: ComponentChildren }) {
  return (
    <>
      <Bulb lines={false} />
      <Lines d={rings.outer} wide={1.2} />
      <Lines d={rings.inner} wide={1.2} />
      {children}
      <Lines d="M27 52Q32 47 37 52" wide={1.2} />
    </>
  );
}

/** A leaf seen from near. */
export function Blade() {
  return (
    <path
      d="M23 60C18 40 22 20 38 4C46 22 45 42 41 60Z"
      fill={ink.paper}
      stroke={ink.leaf}
      stroke-width={2.6}
    />
  );
}

/** Small round marks: dust, grains, spores. */
export function Dots({
  at,
  r,
  fill = ink.ink,
}: {
  at: readonly [number, number][];
  r: number;
  fill?: string;
}) {
  return (
    <>
      {at.map(([x, y]) => (
        <circle key={`${x} ${y}`} cx={x} cy={y} r={r} fill={fill} />
      ))}
    </>
  );
}
