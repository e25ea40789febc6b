import { type DayAxis, xOfDay } from '../drawing/day-axis.ts';
import { ink } from '../drawing/ink.ts';
import { MonthNames } from '../drawing/month-names.tsx';
import { px, smoothArea, smoothBand, smoothLine } from '../drawing/path.ts';
import { type as font, Label, Picture } from '../drawing/picture.tsx';
import { textWidth } from '../drawing/text-fit.ts';
import { BarredStretches } from './barred-stretches.tsx';
import { downThrough, type HillsLayout, hillsLayout } from './hills-layout.ts';
import { LeavesLine, SizeBand } from './lower-lines.tsx';
import type { StartHillsProps } from './start-hills-props.ts';
import { StartMark } from './start-mark.tsx';
import { TroublePatterns, troubleFill } from './trouble-patterns.tsx';

/**
 * The year's starts as a landscape: hills as high as good bulbs are likely, hollows as deep as something goes wrong,
 * named in them; pale and crossed where nobody starts; below, how wide bulbs get and on how many leaves.
 */
export function StartHills(props: StartHillsProps) {
  const { id, width, summary, today, marker } = props;
  const layout = hillsLayout(props);
  const { axis, ground, top, height } = layout;
  const [peakX] = layout.hill.reduce((a, b) => (b[1] < a[1] ? b : a), [axis.left, ground]);
  // most starts that are chosen stand on the hill: words keep to the other end
  const isPeakLeft = peakX < (axis.left + axis.right) / 2;
  return (
    <Picture name="start-hills" width={width} height={height} summary={summary}>
      <defs>
        <TroublePatterns id={id} />
      </defs>
      <path
        d={`M${px(axis.left)} ${px(top)}H${px(axis.right)}`}
        stroke={ink.line}
        stroke-dasharray="1 5"
        stroke-linecap="round"
      />
      <Label
        x={isPeakLeft ? axis.right : axis.left}
        y={top - 5}
        anchor={isPeakLeft ? 'end' : 'start'}
        small
        fill={ink.ink2}
      >
        {props.everyText}
      </Label>
      <path d={smoothArea(layout.hill, ground)} fill={ink.leaf} fill-opacity={0.28} />
      {layout.hollows.map(({ trouble, upper, lower }) => (
        <g key={trouble}>
          <path d={smoothBand(upper, lower)} fill={ink.paper2} />
          <path d={smoothBand(upper, lower)} fill={troubleFill(id, trouble)} fill-opacity={0.8} />
          <path d={smoothLine(lower)} fill="none" stroke={ink.ink2} stroke-width={1} />
        </g>
      ))}
      <path d={smoothLine(layout.hill)} fill="none" stroke={ink.leaf} stroke-width={2.2} />
      <BarredStretches id={id} layout={layout} />
      <path d={`M${px(axis.left)} ${px(ground)}H${px(axis.right)}`} stroke={ink.earth} stroke-width={1.8} />
      {today && <TodayMark layout={layout} {...today} />}
      {marker && <StartMark axis={axis} parts={layout} {...marker} />}
      {layout.words.map(({ text, x, y }) => (
        <Label key={`${x} ${y}`} x={x} y={y} anchor="middle" bold>
          {text}
        </Label>
      ))}
      <SizeBand layout={layout} starts={props.starts} />
      <LeavesLine layout={layout} starts={props.starts} />
      <MonthNames axis={axis} names={props.months} tickY={layout.leavesBottom} textY={layout.monthsY} />
      <Key id={id} layout={layout} />
    </Picture>
  );
}

function Key({ id, layout: { key, keyTop } }: { id: string; layout: HillsLayout }) {
  return (
    <>
      {key.map(({ trouble, text, x, y }) => (
        <g key={text}>
          <rect
            x={px(x)}
            y={px(keyTop + y)}
            width={16}
            height={14}
            fill={troubleFill(id, trouble)}
            stroke={ink.ink2}
            stroke-width={0.8}
          />
          <Label x={x + 22} y={keyTop + y + 11} small>
            {text}
          </Label>
        </g>
      ))}
    </>
  );
}

function TodayMark({ layout, day, text }: { layout: HillsLayout; day: number; text: string }) {
  const { axis, top, todayY } = layout;
  if (!isOnAxis(axis, day)) return null;
  const x = xOfDay(axis, day + 0.5);
  const half = textWidth(text, font.small) / 2;
  return (
    <>
      <path
        d={downThrough(x, top, layout)}
        stroke={ink.ink}
        stroke-width={1.6}
        stroke-dasharray="1 4"
        stroke-linecap="round"
      />
      <Label x={Math.max(axis.left + half, Math.min(axis.right - half, x))} y={todayY} anchor="middle" small>
        {text}
      </Label>
    </>
  );
}

function isOnAxis({ firstDay, days }: DayAxis, day: number): boolean {
  return day >= firstDay && day < firstDay + days;
}
