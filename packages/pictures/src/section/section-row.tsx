import { ink } from '../drawing/ink.ts';
import { px } from '../drawing/path.ts';
import { Label, Picture } from '../drawing/picture.tsx';
import { discMm, type Onion } from './onion.ts';
import { CutOnion } from './onion-shape.tsx';
import { type RowLayout, rowLayout } from './row-layout.ts';

/** An onion with its words under it, the first line set bold. */
export type CaptionedOnion = { onion: Onion; lines: readonly string[] };

export type SectionRowProps = {
  /** px; see FitWidth. */
  width: number;
  summary: string;
  onions: readonly CaptionedOnion[];
  /** Words for the disc of the size of a coin; null: none drawn. */
  discText: string | null;
  /** Pixels a millimetre at the most; a common scale for several pictures is {@link scaleFor} of all of them. */
  pxPerMm?: number | undefined;
};

/** Onions cut through, side by side on a common line and to one scale; where the width runs out, on further lines. */
export function SectionRow(props: SectionRowProps) {
  const { width, summary, onions } = props;
  const layout = rowLayout(props);
  return (
    <Picture name="section" width={width} height={layout.height} summary={summary}>
      {layout.baselines.map((y) => (
        <path key={y} d={`M2 ${px(y)}H${px(width - 2)}`} stroke={ink.earth} stroke-width={1.5} />
      ))}
      {layout.cells.map((cell) => (
        <g key={cell.onion}>
          {cell.onion === null ? (
            <Disc x={cell.x} baseY={cell.baseY} pxPerMm={layout.pxPerMm} />
          ) : (
            <CutOnion
              onion={onions[cell.onion].onion}
              x={cell.x}
              baseY={cell.baseY}
              pxPerMm={layout.pxPerMm}
            />
          )}
          <Caption cell={cell} />
        </g>
      ))}
    </Picture>
  );
}

function Caption({ cell }: { cell: RowLayout['cells'][number] }) {
  return (
    <>
      {cell.lines.map(({ text, bold, y }) => (
        <Label
          key={y}
          x={cell.x}
          y={y}
          anchor="middle"
          bold={bold}
          small={!bold}
          fill={bold ? ink.ink : ink.ink2}
          on={null}
        >
          {text}
        </Label>
      ))}
    </>
  );
}

function Disc({ x, baseY, pxPerMm }: { x: number; baseY: number; pxPerMm: number }) {
  const r = (discMm / 2) * pxPerMm;
  return (
    <>
      <circle
        cx={px(x)}
        cy={px(baseY - r)}
        r={px(r)}
        fill={ink.paper2}
        stroke={ink.ink2}
        stroke-width={1.3}
      />
      <circle cx={px(x)} cy={px(baseY - r)} r={px(r * 0.86)} fill="none" stroke={ink.line} stroke-width={1} />
    </>
  );
}
