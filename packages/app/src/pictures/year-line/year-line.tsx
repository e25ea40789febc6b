import { xOfDay } from '../day-axis.ts';
import { ink } from '../ink.ts';
import { MonthNames } from '../month-names.tsx';
import { areaPath, linePath, type Point, px } from '../path.ts';
import { Label, Picture, type } from '../picture.tsx';
import { boldWidth, textWidth } from '../text-fit.ts';
import { CropMarks, CropShape, leavesWordsAt } from './crop-shape.tsx';
import { Frost, FrostPattern, Heat } from './frost-and-heat.tsx';
import { rainStrokes } from './rain-strokes.ts';
import { runsOf, waveRow, type YearLayout, yearLayout } from './year-layout.ts';
import type { YearLineProps } from './year-line-props.ts';

/**
 * The year of a place: day length as a ridge, what the onion needs as the water it must rise out of, rain and heat
 * above, frost in the ground, and if wanted a crop on it.
 */
export function YearLine(props: YearLineProps) {
  const { id, width, summary, need, today, crop } = props;
  const layout = yearLayout(props);
  const { axis, skyTop, ground, soilBottom, height } = layout;
  const { left, right } = axis;
  const span = right - left;
  const keyAtRight = today !== null && xOfDay(axis, today.day) < (left + right) / 2;
  return (
    <>
      <Picture name="year-line" width={width} height={height} summary={summary}>
        <defs>
          <FrostPattern id={id} />
        </defs>
        <Land layout={layout} need={need} />
        <path d={linePath(layout.ridge)} fill="none" stroke={ink.ink2} stroke-width={1.6} />
        <path
          d={rainStrokes(
            props.rainMm,
            (i) => xOfDay(axis, axis.firstDay + i),
            skyTop,
            (i) => layout.surfaceY(i) - 3,
          )}
          stroke={ink.sky}
          stroke-width={1.1}
          stroke-linecap="round"
          fill="none"
        />
        <Heat layout={layout} highC={props.highC} text={props.heatText} />
        <rect
          x={px(left)}
          y={px(ground)}
          width={px(span)}
          height={px(soilBottom - ground)}
          fill={ink.earth}
          fill-opacity={0.22}
        />
        <Frost id={id} layout={layout} share={props.frostShare} text={props.frostText} />
        {crop && <CropShape layout={layout} crop={crop} />}
        <path d={`M${px(left)} ${px(ground)}H${px(right)}`} stroke={ink.earth} stroke-width={1.5} />
        {today && (
          <Today layout={layout} {...today} beside={{ text: props.rainText, isAtRight: keyAtRight }} />
        )}
        {need && <NeedText {...props} layout={layout} need={need} />}
        {props.dayTexts.map((text) => (
          <DayText key={text.day} layout={layout} sunUpH={props.sunUpH} {...text} />
        ))}
        <MonthNames axis={axis} names={props.months} tickY={soilBottom} textY={layout.monthsY} />
        <Label
          x={keyAtRight ? right : left}
          y={14}
          anchor={keyAtRight ? 'end' : 'start'}
          small
          fill={ink.ink2}
        >
          {props.rainText}
        </Label>
        {crop && <CropMarks layout={layout} marks={layout.marks} />}
      </Picture>
      {/* those who listen have it in the picture's summary */}
      {props.note !== null && (
        <p class="picture-note" aria-hidden="true">
          {props.note}
        </p>
      )}
    </>
  );
}

function waterLevel(layout: YearLayout, needHours: number): number {
  return Math.min(layout.ground, Math.max(layout.ridgeTop - 8, layout.yOfHours(needHours)));
}

/** What stands out of the water is long enough; the rest lies under it. */
function Land({ layout, need }: { layout: YearLayout; need: YearLineProps['need'] }) {
  const { axis, ground, ridge } = layout;
  if (!need) return <path d={areaPath(ridge, ground)} fill={ink.skin2} fill-opacity={0.6} />;
  const y = waterLevel(layout, need.hours);
  const island = ridge.map(([x, ridgeY]): Point => [x, Math.min(ridgeY, y)]);
  const sunk = ridge.map(([x, ridgeY]): Point => [x, Math.max(ridgeY, y)]);
  return (
    <>
      <path
        d={areaPath(
          [
            [axis.left, y],
            [axis.right, y],
          ],
          ground,
        )}
        fill={ink.sky}
        fill-opacity={0.16}
      />
      <path d={areaPath(sunk, ground)} fill={ink.sky} fill-opacity={0.2} />
      <path d={areaPath(island, y)} fill={ink.skin2} fill-opacity={0.6} />
      <path d={`M${px(axis.left)} ${px(y)}H${px(axis.right)}`} stroke={ink.sky} stroke-width={1.8} />
    </>
  );
}

/**
 * The need is written on the widest water, or under the line where the ridge stands out all year; where other words
 * stand there already, at the other end, or else over the line.
 */
function NeedText({
  layout,
  need,
  sunUpH,
  dayTexts,
  crop,
}: Pick<YearLineProps, 'sunUpH' | 'dayTexts' | 'crop'> & {
  layout: YearLayout;
  need: { hours: number; text: string };
}) {
  const { axis } = layout;
  const waters = runsOf(sunUpH.length, (i) => sunUpH[i] < need.hours);
  const widest = waters.toSorted((a, b) => b.last - b.first - (a.last - a.first))[0] ?? {
    first: sunUpH.length - 60,
    last: sunUpH.length - 1,
  };
  const half = textWidth(need.text, type.text * boldWidth) / 2 + 4;
  const middle = xOfDay(axis, axis.firstDay + (widest.first + widest.last + 1) / 2);
  const usual = Math.min(axis.right - half, Math.max(axis.left + half, middle));
  const other = usual < (axis.left + axis.right) / 2 ? axis.right - half : axis.left + half;
  const level = waterLevel(layout, need.hours);
  const taken = [
    ...dayTexts.map((words) => dayTextAt(layout, sunUpH, words)),
    ...(crop ? [leavesWordsAt(layout, crop) ?? []].flat() : []),
  ];
  const isFree = ({ x, y }: { x: number; y: number }) =>
    taken.every((at) => Math.abs(at.y - y) >= type.text || Math.abs(at.x - x) >= at.half + half);
  const under = level + 17;
  const places = [
    { x: usual, y: under },
    { x: other, y: under },
    { x: usual, y: level - 7 },
  ];
  const { x, y } = places.find(isFree) ?? places[0];
  return (
    <Label x={x} y={y} anchor="middle" bold>
      {need.text}
    </Label>
  );
}

type DayTextProps = YearLineProps['dayTexts'][number];

function DayText(props: { layout: YearLayout; sunUpH: readonly number[] } & DayTextProps) {
  const { x, y } = dayTextAt(props.layout, props.sunUpH, props);
  return (
    <Label x={x} y={y} anchor="middle" small>
      {props.text}
    </Label>
  );
}

function dayTextAt(layout: YearLayout, sunUpH: readonly number[], { day, text, place }: DayTextProps) {
  const { axis, ground } = layout;
  const half = textWidth(text, type.small) / 2 + 4;
  const x = Math.min(axis.right - half, Math.max(axis.left + half, xOfDay(axis, day)));
  const ridgeY = layout.yOfHours(sunUpH[Math.min(sunUpH.length - 1, Math.max(0, day - axis.firstDay))]);
  const overHeat = layout.waves > 0 ? 14 + layout.waves * waveRow : 0;
  // a low trough has no room under it
  const y =
    place === 'peak'
      ? ridgeY - 8 - overHeat
      : place === 'foot'
        ? ground - 6
        : ground - ridgeY > 24
          ? ridgeY + 16
          : ridgeY - 7;
  return { x, y, half };
}

type TodayProps = {
  layout: YearLayout;
  day: number;
  text: string;
  /** What stands on the same line, at one end of it. */
  beside: { text: string; isAtRight: boolean };
};

function Today({ layout, day, text, beside }: TodayProps) {
  const { axis, soilBottom } = layout;
  if (day < axis.firstDay || day >= axis.firstDay + axis.days) return null;
  const x = xOfDay(axis, day + 0.5);
  const half = textWidth(text, type.text * boldWidth) / 2 + 2;
  const taken = textWidth(beside.text, type.small) + 10;
  const least = axis.left + half + (beside.isAtRight ? 0 : taken);
  const most = axis.right - half - (beside.isAtRight ? taken : 0);
  return (
    <>
      <path
        d={`M${px(x)} 20V${px(soilBottom)}`}
        stroke={ink.ink}
        stroke-width={1.6}
        stroke-dasharray="1 4"
        stroke-linecap="round"
      />
      <Label x={Math.max(axis.left + half, Math.min(most, Math.max(least, x)))} y={14} anchor="middle" bold>
        {text}
      </Label>
    </>
  );
}
