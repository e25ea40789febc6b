import { ink } from '../drawing/ink.ts';
import { px } from '../drawing/path.ts';
import { Label, lineHeight } from '../drawing/picture.tsx';
import type { HillsLayout } from './hills-layout.ts';
import { troubleFill } from './trouble-patterns.tsx';

/** The ground is crossed out so high where nobody starts, px. */
const crossed = 14;

/** Weeks in which nobody starts: what would come of them is left pale, the ground crossed out, and the reason written. */
export function BarredStretches({ id, layout }: { id: string; layout: HillsLayout }) {
  const { top, ground, bottom, barred } = layout;
  return (
    <>
      {barred.map(({ from, to, lines }) => (
        <g key={from}>
          <rect
            x={px(from)}
            y={px(top - 2)}
            width={px(to - from)}
            height={px(bottom + 2 - (top - 2))}
            fill={ink.paper}
            fill-opacity={0.78}
          />
          <rect
            x={px(from)}
            y={px(ground - crossed)}
            width={px(to - from)}
            height={crossed}
            fill={troubleFill(id, 'barred')}
          />
          {lines?.map((line, i) => (
            <Label
              key={line}
              x={(from + to) / 2}
              y={ground - crossed - 8 - (lines.length - 1 - i) * lineHeight}
              anchor="middle"
              small
            >
              {line}
            </Label>
          ))}
        </g>
      ))}
    </>
  );
}
