import { xOfDay } from '../day-axis.ts';
import { ink } from '../ink.ts';
import { MonthNames } from '../month-names.tsx';
import { px, smoothArea, smoothBand, smoothLine } from '../path.ts';
import { type as font, Label, Picture } from '../picture.tsx';
import { textWidth } from '../text-fit.ts';
import { deepest, type HillsLayout, hillsLayout } from './hills-layout.ts';
import { LeavesLine, SizeBand } from './lower-lines.tsx';
import type { StartHillsProps } from './start-hills-props.ts';
import { TroublePatterns, troubleFill } from './trouble-patterns.tsx';

/**
 * The year's starts as a landscape: hills as high as good bulbs are likely, hollows as deep as something goes wrong,
 * named in them; below, how wide bulbs get and on how many leaves.
 */
export function StartHills(props: StartHillsProps) {
  const { id, width, summary, today, marker } = props;
  const layout = hillsLayout(props);
  const { axis, ground, top, height } = layout;
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
      <Label x={axis.left} y={top - 5} small fill={ink.ink2}>
        {props.everyText}
      </Label>
      <path d={smoothArea(layout.hill, ground)} fill={ink.leaf} fill-opacity={0.28} />
      {layout.hollows.map(({ trouble, upper, lower }) => (
        <g key={trouble}>
          <path d={smoothBand(upper, lower)} fill={ink.paper2} />
          <path d={smoothBand(upper, lower)} fill={troubleFill(id, trouble)} />
          <path d={smoothLine(lower)} fill="none" stroke={ink.ink2} stroke-width={1} />
        </g>
      ))}
      <path d={smoothLine(layout.hill)} fill="none" stroke={ink.leaf} stroke-width={2.2} />
      <path d={`M${px(axis.left)} ${px(ground)}H${px(axis.right)}`} stroke={ink.earth} stroke-width={1.8} />
      <HillText layout={layout} text={props.goodText} />
      {layout.hollows.map(({ trouble, upper, lower }) => (
        <HollowText
          key={trouble}
          layout={layout}
          upper={upper}
          lower={lower}
          text={props.troubleTexts[trouble]}
        />
      ))}
      <SizeBand layout={layout} starts={props.starts} text={props.sizeText} />
      <LeavesLine layout={layout} starts={props.starts} text={props.leavesText} />
      <MonthNames axis={axis} names={props.months} tickY={layout.leavesBottom} textY={layout.monthsY} />
      {today && <DayMark layout={layout} day={today.day} text={today.text} isMarker={false} />}
      {marker && <DayMark layout={layout} day={marker.day} text={marker.text} isMarker={true} />}
    </Picture>
  );
}

function HillText({ layout, text }: { layout: HillsLayout; text: string }) {
  const { axis, ground, hill } = layout;
  const spot = deepest(
    hill,
    hill.map(([x]) => [x, ground]),
    26,
  );
  return (
    spot && (
      <Word layout={layout} x={spot.x} y={Math.min(ground - 8, spot.y + 5)} text={text} left={axis.left} />
    )
  );
}

function HollowText(props: {
  layout: HillsLayout;
  upper: HillsLayout['hill'];
  lower: HillsLayout['hill'];
  text: string;
}) {
  const spot = deepest(props.upper, props.lower, 15);
  return (
    spot && (
      <Word layout={props.layout} x={spot.x} y={spot.y + 5} text={props.text} left={props.layout.axis.left} />
    )
  );
}

function Word({
  layout,
  x,
  y,
  text,
  left,
}: {
  layout: HillsLayout;
  x: number;
  y: number;
  text: string;
  left: number;
}) {
  const half = textWidth(text, font.text) / 2 + 3;
  return (
    <Label x={Math.min(layout.axis.right - half, Math.max(left + half, x))} y={y} anchor="middle" bold>
      {text}
    </Label>
  );
}

function DayMark({
  layout,
  day,
  text,
  isMarker,
}: {
  layout: HillsLayout;
  day: number;
  text: string;
  isMarker: boolean;
}) {
  const { axis, leavesBottom, top } = layout;
  if (day < axis.firstDay || day >= axis.firstDay + axis.days) return null;
  const x = xOfDay(axis, day + 0.5);
  const half = textWidth(text, font.text) / 2 + 2;
  const textX = Math.min(axis.right - half, Math.max(axis.left + half, x));
  if (!isMarker) {
    return (
      <>
        <path
          d={`M${px(x)} ${px(top)}V${px(leavesBottom)}`}
          stroke={ink.ink}
          stroke-width={1.6}
          stroke-dasharray="1 4"
          stroke-linecap="round"
        />
        <Label x={textX} y={leavesBottom - 4} anchor="middle" small>
          {text}
        </Label>
      </>
    );
  }
  return (
    <>
      <path d={`M${px(x)} 28V${px(leavesBottom)}`} stroke={ink.ink} stroke-width={2} />
      <path
        class="start-handle"
        d={`M${px(x)} 38C${px(x - 13)} 38 ${px(x - 12)} 24 ${px(x - 3)} 21Q${px(x - 1)} 19 ${px(x)} 15Q${px(x + 1)} 19 ${px(x + 3)} 21C${px(x + 12)} 24 ${px(x + 13)} 38 ${px(x)} 38Z`}
        fill={ink.skin}
        stroke={ink.ink}
        stroke-width={1.6}
      />
      <Label x={textX} y={12} anchor="middle" bold>
        {text}
      </Label>
    </>
  );
}
