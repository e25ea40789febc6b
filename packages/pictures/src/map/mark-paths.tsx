import { ink } from '../drawing/ink.ts';
import { px } from '../drawing/path.ts';
import { inkings, type MarkLook } from './map-marks.ts';

type Props = { paths: readonly { look: MarkLook; d: string }[]; rowWidth: number };

/** Marks as paths, one for each look. */
export function MarkPaths({ paths, rowWidth }: Props) {
  return (
    <>
      {paths.map(({ look, d }) => {
        const { colour, way, opacity } = inkings[look];
        return way === 'stroke' ? (
          <path key={look} d={d} stroke={ink[colour]} stroke-width={px(rowWidth)} fill="none" />
        ) : (
          <path key={look} d={d} fill={ink[colour]} fill-opacity={opacity} />
        );
      })}
    </>
  );
}
