import { xOfDay } from '../drawing/day-axis.ts';
import { ink } from '../drawing/ink.ts';
import { monthNames } from '../drawing/month-names.tsx';
import { areaPath, linePath, type Point, px } from '../drawing/path.ts';
import { type as font, Label, lineHeight } from '../drawing/picture.tsx';
import { textWidth } from '../drawing/text-fit.ts';
import { onionPaint } from '../section/index.ts';
import type { PlacedMark } from './place-marks.ts';
import { bulbsWide, stepHeights, type YearLayout } from './year-layout.ts';
import type { CropLine } from './year-line-props.ts';

/** Leaves climb as steps, one a leaf; under them the bulb swells; at the end the tops lie down. */
export function CropShape({ layout, crop }: { layout: YearLayout; crop: CropLine }) {
  const { axis, ground } = layout;
  const yOf = stepHeights(layout, crop);
  const stairs: Point[] = [];
  for (const { day, made } of crop.leaves) {
    const x = xOfDay(axis, day);
    if (stairs.length > 0) stairs.push([x, stairs[stairs.length - 1][1]]);
    stairs.push([x, yOf(made)]);
  }
  if (crop.topsOver !== null && stairs.length > 0) {
    const x = xOfDay(axis, crop.topsOver);
    const last = stairs[stairs.length - 1][1];
    stairs.push(
      [x, last],
      [x + 5, last + (ground - last) * 0.2],
      [x + 12, ground - (ground - last) * 0.12],
      [x + 14, ground],
    );
  }
  // in the ground or in a tray
  const waitFrom = xOfDay(axis, Math.min(...crop.marks.map(({ day }) => day)));
  return (
    <>
      {stairs.length > 0 && waitFrom < stairs[0][0] && (
        <path
          d={`M${px(waitFrom)} ${px(ground - 3)}H${px(stairs[0][0])}`}
          stroke={ink.leaf}
          stroke-width={2.4}
          stroke-dasharray="0.1 5"
          stroke-linecap="round"
        />
      )}
      <path d={areaPath(stairs, ground)} fill={ink.leaf} fill-opacity={0.34} />
      <path d={linePath(stairs)} fill="none" stroke={ink.leaf} stroke-width={2} stroke-linejoin="round" />
      <Bulb layout={layout} bulb={crop.bulb} />
      {crop.counted.map(({ day, made }) => (
        <Notch key={day} x={xOfDay(axis, day + 0.5)} y={yOf(made)} />
      ))}
    </>
  );
}

/** A count of leaves, as one cuts a notch for it: on the steps where it is as expected. */
function Notch({ x, y }: { x: number; y: number }) {
  const line = `M${px(x - 5)} ${px(y)}H${px(x + 5)}`;
  return (
    <>
      <path d={line} stroke={ink.paper} stroke-width={7} stroke-linecap="round" />
      <path d={line} stroke={ink.ink} stroke-width={3.4} stroke-linecap="round" />
    </>
  );
}

/** The bulb, lying in the soil, as wide as it is that day. */
function Bulb({ layout, bulb }: { layout: YearLayout; bulb: CropLine['bulb'] }) {
  if (bulb.length < 2) return null;
  const { axis, ground, soilBottom, common } = layout;
  const widest = common?.bulbMm ?? bulbsWide({ bulb });
  const line = (part: number): Point[] => {
    const points = bulb.map(
      ({ day, acrossMm }): Point => [
        xOfDay(axis, day),
        ground + part * (acrossMm / widest) * (soilBottom - ground - 3),
      ],
    );
    const [x, y] = points[points.length - 1];
    const round = Math.min(12, (y - ground) * 0.7);
    for (let turn = 1; turn <= 6; turn++) {
      const angle = (turn / 6) * (Math.PI / 2);
      points.push([x + round * Math.sin(angle), ground + (y - ground) * Math.cos(angle)]);
    }
    return points;
  };
  return (
    <>
      <path
        d={areaPath(line(1), ground)}
        fill={onionPaint.yellow.flesh2}
        stroke={onionPaint.yellow.skinLine}
        stroke-width={1.4}
      />
      {[0.3, 0.55, 0.78].map((part) => (
        <path
          key={part}
          d={linePath(line(part))}
          fill="none"
          stroke={ink.paper}
          stroke-width={1.1}
          stroke-opacity={0.75}
        />
      ))}
    </>
  );
}

type MarksProps = { layout: YearLayout; marks: readonly PlacedMark[]; months: readonly string[] };

/** What the eye can't infer: each with a plumb line to its own row of words, past the names of the months. */
export function CropMarks({ layout, marks, months }: MarksProps) {
  const { axis, ground, soilBottom, monthsY, firstMarkY } = layout;
  const names = monthNames(axis, months);
  const throughName = (x: number) => names.some(({ left, right }) => x > left - 3 && x < right + 3);
  return (
    <>
      {marks.map(({ mark, x, dotY }) => (
        <g key={mark.kind}>
          <path
            d={`M${px(x)} ${px(ground)}${throughName(x) ? `V${px(soilBottom + 5)}M${px(x)} ${px(monthsY + 4)}` : ''}V${px(firstMarkY + dotY)}`}
            stroke={ink.ink2}
            stroke-width={1}
          />
          <circle cx={px(x)} cy={px(ground)} r={3.2} fill={ink.paper} stroke={ink.ink} stroke-width={1.6} />
        </g>
      ))}
      {marks.map(({ mark, x, dotY, anchor, textX, lines, textY, small }) => (
        <g key={mark.kind}>
          {mark.span && (
            <path
              d={`M${px(xOfDay(axis, mark.span.from))} ${px(firstMarkY + dotY)}H${px(xOfDay(axis, mark.span.to + 1))}`}
              stroke={ink.skin2}
              stroke-width={7}
              stroke-linecap="round"
            />
          )}
          <circle cx={px(x)} cy={px(firstMarkY + dotY)} r={3} fill={ink.ink} />
          {lines.map((line, i) => (
            <MarkWords
              key={line}
              x={textX}
              y={firstMarkY + textY + i * lineHeight}
              anchor={anchor}
              small={small}
              text={line}
            />
          ))}
        </g>
      ))}
    </>
  );
}

/** The same without their words, on the ground: each day, and where it falls in 8 years of 10. */
export function MarkDots({ layout, crop }: { layout: YearLayout; crop: CropLine }) {
  const { axis, ground } = layout;
  return (
    <>
      {crop.marks.map(({ kind, span }) =>
        span ? (
          <path
            key={kind}
            d={`M${px(xOfDay(axis, span.from))} ${px(ground)}H${px(xOfDay(axis, span.to + 1))}`}
            stroke={ink.skin2}
            stroke-width={6}
            stroke-linecap="round"
          />
        ) : null,
      )}
      {crop.marks.map(({ kind, day }) => (
        <circle
          key={kind}
          cx={px(xOfDay(axis, day))}
          cy={px(ground)}
          r={3.2}
          fill={ink.paper}
          stroke={ink.ink}
          stroke-width={1.6}
        />
      ))}
    </>
  );
}

type WordsProps = { x: number; y: number; anchor: PlacedMark['anchor']; small: boolean; text: string };

/** Words on paper of their own, so that plumb lines pass behind them. */
function MarkWords({ x, y, anchor, small, text }: WordsProps) {
  const wide = textWidth(text, small ? font.small : font.text);
  const left = anchor === 'start' ? x : anchor === 'end' ? x - wide : x - wide / 2;
  return (
    <>
      <rect x={px(left)} y={px(y - 13)} width={px(wide)} height={lineHeight} fill={ink.paper} />
      <Label x={x} y={y} anchor={anchor} small={small}>
        {text}
      </Label>
    </>
  );
}
