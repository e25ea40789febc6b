import type { VNode } from 'preact';
import { overlaid } from '../drawing/composed.tsx';
import { YearLine, type YearLineProps } from '../year-line/index.ts';
import { type Waterline, Waterlines } from './waterlines.tsx';

type Props = { year: YearLineProps; others: readonly Waterline[] };

/** The year at a latitude with the onion chosen on it, and the days that the other kinds ask for. */
export function LatitudeYear({ year, others }: Props) {
  return (
    <div class="latitude-year">
      <YearLine {...year} />
      <Waterlines year={year} lines={others} />
    </div>
  );
}

/** The same as one picture, to be kept. */
export function keptLatitudeYear({ year, others }: Props): VNode {
  return overlaid([<YearLine key="year" {...year} />, <Waterlines key="lines" year={year} lines={others} />]);
}
