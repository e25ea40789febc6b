import { ink } from './ink.ts';
import { px } from './path.ts';

const radius = 5;
const stepPx = 13;
const middle = radius + 1.5;

/** A share as ten small bulbs, as many filled as there are tenths; the words beside it say the same. */
export function ChanceBar({ share }: { share: number }) {
  const parts = Array.from({ length: 10 }, (_, at) => Math.min(1, Math.max(0, share * 10 - at)));
  const filled = parts.map((part, at) => (part > 0 ? discAt(at, radius * Math.sqrt(part)) : ''));
  return (
    <svg
      class="chance-bar"
      aria-hidden="true"
      viewBox={`0 0 ${10 * stepPx} ${2 * middle}`}
      width={10 * stepPx}
      height={2 * middle}
    >
      <path
        d={parts.map((_, at) => discAt(at, radius)).join('')}
        fill="none"
        stroke={ink.ink2}
        stroke-width={1.2}
      />
      <path d={filled.join('')} fill={ink.ink} />
    </svg>
  );
}

function discAt(at: number, radiusPx: number): string {
  const r = px(radiusPx);
  // half circles meet only where their ends lie just two radii apart
  const across = px(2 * Number(r));
  const from = px(stepPx * at + middle - Number(r));
  return `M${from} ${middle}a${r} ${r} 0 1 0 ${across} 0a${r} ${r} 0 1 0 -${across} 0`;
}
