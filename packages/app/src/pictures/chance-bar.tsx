import { ink } from './ink.ts';
import { px } from './path.ts';

const radius = 5;
const stepPx = 13;

/** A share as ten small bulbs, as many filled as there are tenths; the words beside it say the same. */
export function ChanceBar({ share }: { share: number }) {
  return (
    <svg
      class="chance-bar"
      aria-hidden="true"
      viewBox={`0 0 ${10 * stepPx} ${2 * radius + 3}`}
      width={10 * stepPx}
      height={2 * radius + 3}
    >
      {Array.from({ length: 10 }, (_, at) => {
        const part = Math.min(1, Math.max(0, share * 10 - at));
        const cx = px(stepPx * at + radius + 1.5);
        const cy = px(radius + 1.5);
        return (
          <g key={cx}>
            <circle cx={cx} cy={cy} r={radius} fill="none" stroke={ink.ink2} stroke-width={1.2} />
            {part > 0 && <circle cx={cx} cy={cy} r={px(radius * Math.sqrt(part))} fill={ink.ink} />}
          </g>
        );
      })}
    </svg>
  );
}
