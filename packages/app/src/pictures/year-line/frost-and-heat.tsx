import { xOfDay } from '../day-axis.ts';
import { ink } from '../ink.ts';
import { areaPath, type Point, px } from '../path.ts';
import { type as font, Label } from '../picture.tsx';
import { textWidth } from '../text-fit.ts';
import { hotC, runsOf, waveC, waveRow, type YearLayout } from './year-layout.ts';

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
export function Heat({
  layout,
  highC,
  text,
}: {
  layout: YearLayout;
  highC: readonly number[];
  text: string;
}) {
  const { axis } = layout;
  const waves: { key: string; path: string; from: number; to: number }[] = [];
  for (let wave = 0; wave < layout.waves; wave++) {
    for (const { first, last } of runsOf(highC.length, (i) => highC[i] >= hotC + wave * waveC)) {
      const from = xOfDay(axis, axis.firstDay + first);
      const to = xOfDay(axis, axis.firstDay + last + 1);
      if (to - from < 6) continue;
      const lift = waveRow * (wave + 1);
      waves.push({ key: `${wave} ${first}`, path: shimmer(layout, from, to, lift), from, to });
    }
  }
  const widest = waves.toSorted((a, b) => b.to - b.from - (a.to - a.from))[0];
  const half = textWidth(text, font.small) / 2;
  return (
    <>
      {waves.map(({ key, path }) => (
        <path key={key} d={path} fill="none" stroke={ink.alarm} stroke-width={1.3} stroke-linecap="round" />
      ))}
      {widest && (
        <Label
          x={Math.min(axis.right - half, Math.max(axis.left + half, (widest.from + widest.to) / 2))}
          y={surfaceAt(layout, (widest.from + widest.to) / 2) - 6 - waveRow * layout.waves}
          anchor="middle"
          small
          fill={ink.alarm}
        >
          {text}
        </Label>
      )}
    </>
  );
}

function surfaceAt({ axis, surfaceY }: YearLayout, x: number): number {
  const index = Math.floor(((x - axis.left) / (axis.right - axis.left)) * axis.days);
  return surfaceY(Math.max(0, Math.min(axis.days - 1, index)));
}

function shimmer(layout: YearLayout, from: number, to: number, lift: number): string {
  const period = 14;
  let path = '';
  for (let x = from; x <= to; x += 2) {
    const y = surfaceAt(layout, x) - lift + 1.6 * Math.sin((2 * Math.PI * x) / period);
    path += `${path === '' ? 'M' : 'L'}${px(x)} ${px(y)}`;
  }
  return path;
}
