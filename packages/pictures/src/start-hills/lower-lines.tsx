import { xOfDay } from '../drawing/day-axis.ts';
import { ink } from '../drawing/ink.ts';
import { linePath, type Point, px, smoothBand, smoothLine } from '../drawing/path.ts';
import { Label } from '../drawing/picture.tsx';
import { closedYear, type HillsLayout, overPart, yOnScale } from './hills-layout.ts';
import type { HillStart } from './start-hills-props.ts';

type PartProps = { layout: HillsLayout; starts: readonly HillStart[] };

function PartWords({ x, lines }: { x: number; lines: readonly { text: string; y: number }[] }) {
  return (
    <>
      {lines.map(({ text, y }) => (
        <Label key={y} x={x} y={y} small fill={ink.ink2}>
          {text}
        </Label>
      ))}
    </>
  );
}

/** The bulb across, by start: 8 years in 10 as a band of skin, the middle as a line. */
export function SizeBand({ layout, starts }: PartProps) {
  const { axis, sizeLines, sizeTop, sizeBottom } = layout;
  const all = starts.flatMap(({ acrossMm }) => (acrossMm ? [acrossMm.low, acrossMm.high] : []));
  const high = Math.max(60, ...all);
  const y = (mm: number) => yOnScale(mm, 0, high, sizeTop, sizeBottom);
  return (
    <>
      <PartWords x={axis.left} lines={overPart(sizeLines, sizeTop)} />
      <path d={`M${px(axis.left)} ${px(sizeBottom)}H${px(axis.right)}`} stroke={ink.line} />
      {stretches(closedYear(starts, axis.firstDay, axis.days), ({ acrossMm }) => acrossMm).map((stretch) => {
        const line = (value: (across: NonNullable<HillStart['acrossMm']>) => number) =>
          stretch.map(({ day, value: across }): Point => [xOfDay(axis, day), y(value(across))]);
        return (
          <g key={stretch[0].day}>
            <path
              d={smoothBand(
                line(({ high: up }) => up),
                line(({ low }) => low),
              )}
              fill={ink.skin}
              fill-opacity={0.4}
            />
            <path
              d={smoothLine(line(({ middle }) => middle))}
              fill="none"
              stroke={ink.skin}
              stroke-width={2.2}
              stroke-linecap="round"
            />
          </g>
        );
      })}
    </>
  );
}

/** Green leaves standing when bulbs start, as steps. */
export function LeavesLine({ layout, starts }: PartProps) {
  const { axis, leavesLines, leavesTop, leavesBottom } = layout;
  const high = Math.max(8, ...starts.map(({ leavesGreen }) => leavesGreen ?? 0));
  const y = (leaves: number) => yOnScale(leaves, 0, high, leavesTop, leavesBottom);
  return (
    <>
      <PartWords x={axis.left} lines={overPart(leavesLines, leavesTop)} />
      <path d={`M${px(axis.left)} ${px(leavesBottom)}H${px(axis.right)}`} stroke={ink.line} />
      {stretches(closedYear(starts, axis.firstDay, axis.days), ({ leavesGreen }) => leavesGreen).map(
        (stretch) => {
          const steps: Point[] = [];
          for (const { day, value } of stretch) {
            const at = y(Math.round(value));
            if (steps.length > 0) steps.push([xOfDay(axis, day), steps[steps.length - 1][1]]);
            steps.push([xOfDay(axis, day), at]);
          }
          return (
            <path
              key={stretch[0].day}
              d={linePath(steps)}
              fill="none"
              stroke={ink.leaf}
              stroke-width={2}
              stroke-linejoin="round"
            />
          );
        },
      )}
    </>
  );
}

/** Runs of starts for which a value is known. */
function stretches<Value>(
  starts: readonly HillStart[],
  read: (start: HillStart) => Value | null,
): { day: number; value: Value }[][] {
  const runs: { day: number; value: Value }[][] = [];
  let open = false;
  for (const start of starts) {
    const value = read(start);
    if (value === null) {
      open = false;
      continue;
    }
    if (!open) runs.push([]);
    open = true;
    runs[runs.length - 1].push({ day: start.day, value });
  }
  return runs;
}
