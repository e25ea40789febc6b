import { ink } from '../drawing/ink.ts';
import { px } from '../drawing/path.ts';
import { Label } from '../drawing/picture.tsx';
import type { YearLayout } from './year-layout.ts';

/** Pegs in a row under the months, as one marks a bed for sowing, with the numbers of the work that is told beside. */
export function CropWork({ layout: { work, workY } }: { layout: YearLayout }) {
  return (
    <>
      {work.map(({ pegs, text, x }) => (
        <g key={text}>
          <path
            d={pegs.map((peg) => `M${px(peg)} ${px(workY - 21)}v8`).join('')}
            stroke={ink.leaf}
            stroke-width={3}
            stroke-linecap="round"
          />
          <Label x={x} y={workY} anchor="middle" small bold fill={ink.leaf}>
            {text}
          </Label>
        </g>
      ))}
    </>
  );
}
