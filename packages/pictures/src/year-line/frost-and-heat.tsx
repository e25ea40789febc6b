import { xOfDay } from '../drawing/day-axis.ts';
import { ink } from '../drawing/ink.ts';
import { areaPath, type Point, px } from '../drawing/path.ts';
import { type as font, Label } from '../drawing/picture.tsx';
import { textWidth } from '../drawing/text-fit.ts';
import { runsOf, waveRow, type YearLayout } from './year-layout.ts';

/** Below this share of nights frost is not drawn. */
const rareFrost = 0.05;

export function FrostPattern({ id }: { id: string }) {
  return (
    <pattern
      id={`${id}-frost`}
      width={5}
      height={5}
      patternUnits="userSpaceOnUse"
      patternTransform="rotate(45)"
    >
      <path d="M0 0V5" stroke={ink.sky} stroke-width={2.4} />
    </pattern>
  );
}

/** Frost goes into the ground: hatched as deep as nights are frosty. */
export function Frost(props: { id: string; layout: YearLayout; share: readonly number[]; text: string }) {
  const { id, layout, share, text } = props;
  const { axis, ground, soilBottom } = layout;
  const x = (i: number) => xOfDay(axis, axis.firstDay + i);
  const depth = soilBottom - ground;
  const runs = runsOf(share.length, (i) => share[i] >= rareFrost);
  const widest = runs.toSorted((a, b) => b.last - b.first - (a.last - a.first))[0];
  return (
    <>
      {runs.map(({ first, last }) => {
        const points: Point[] = [];
        for (let i = first; i <= last; i += 3) points.push([x(i), ground + share[i] * depth]);
        points.push([x(last + 1), ground + share[last] * depth]);
        return (
          <path
            key={first}
            d={areaPath(points, ground)}
            fill={`url(#${id}-frost)`}
            stroke={ink.sky}
            stroke-width={0.8}
          />
        );
      })}
      {widest && x(widest.last + 1) - x(widest.first) > textWidth(text, font.small) + 8 && (
        <Label x={(x(widest.first) + x(widest.last + 1)) / 2} y={ground + 17} anchor="middle" small>
          {text}
        </Label>
      )}
    </>
  );
}

/** Heat shimmers over the ridge: one wave where days reach 30 °C, another for each 2.5 °C more. */
export function Heat({ layout }: { layout: YearLayout }) {
  return (
    <>
      {layout.shimmer.map(({ wave, from, to }) => (
        <path
          key={`${wave} ${from}`}
          d={shimmerPath(layout, from, to, waveRow * (wave + 1))}
          fill="none"
          stroke={ink.alarm}
          stroke-width={1.3}
          stroke-linecap="round"
        />
      ))}
    </>
  );
}

function shimmerPath({ surfaceAt }: YearLayout, from: number, to: number, lift: number): string {
  const period = 14;
  let path = '';
  for (let x = from; x <= to; x += 2) {
    const y = surfaceAt(x) - lift + 1.6 * Math.sin((2 * Math.PI * x) / period);
    path += `${path === '' ? 'M' : 'L'}${px(x)} ${px(y)}`;
  }
  return path;
}
