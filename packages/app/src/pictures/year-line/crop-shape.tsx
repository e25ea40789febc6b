import { xOfDay } from '../day-axis.ts';
import { ink } from '../ink.ts';
import { areaPath, linePath, type Point, px } from '../path.ts';
import { type as font, Label } from '../picture.tsx';
import { onionPaint } from '../section/index.ts';
import { textWidth } from '../text-fit.ts';
import type { PlacedMark } from './place-marks.ts';
import type { YearLayout } from './year-layout.ts';
import type { CropLine } from './year-line-props.ts';

/** The stairs end a little below the ridge's top at this many leaves; more leaves make lower steps. */
const usualLeaves = 13;
const partOfRidge = 0.9;
/** A bulb this wide fills the soil's depth, mm; a wider one is drawn to its own scale. */
const usualBulbMm = 90;

/** Leaves climb as steps, one a leaf; under them the bulb swells; at the end the tops lie down. */
export function CropShape({ layout, crop }: { layout: YearLayout; crop: CropLine }) {
  const { axis, ground } = layout;
  const most = Math.max(usualLeaves, ...crop.leaves.map(({ made }) => made));
  const top = layout.lead === 'weather' ? layout.ridgeTop : Math.min(...layout.ridge.map(([, y]) => y));
  const yOf = (leaves: number) => ground - (leaves / most) * partOfRidge * (ground - top);
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
  const text = crop.leavesText;
  const textY = stairs.length > 0 ? Math.min(...stairs.map(([, y]) => y)) - 6 : ground;
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
      {text && (
        <Label
          x={clampText(layout, xOfDay(axis, text.day), text.text)}
          y={textY}
          anchor="middle"
          bold
          fill={ink.leaf}
        >
          {text.text}
        </Label>
      )}
    </>
  );
}

function clampText({ axis }: YearLayout, x: number, text: string): number {
  const half = textWidth(text, font.text) / 2;
  return Math.min(axis.right - half, Math.max(axis.left + half, x));
}

/** The bulb, lying in the soil, as wide as it is that day. */
function Bulb({ layout, bulb }: { layout: YearLayout; bulb: CropLine['bulb'] }) {
  if (bulb.length < 2) return null;
  const { axis, ground, soilBottom } = layout;
  const widest = Math.max(usualBulbMm, ...bulb.map(({ acrossMm }) => acrossMm));
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

/** What the eye can't infer: each with a plumb line to its own row of words. */
export function CropMarks({ layout, marks }: { layout: YearLayout; marks: readonly PlacedMark[] }) {
  const { axis, ground, firstMarkY } = layout;
  return (
    <>
      {marks.map(({ mark, x, dotY }) => (
        <g key={mark.kind}>
          <path d={`M${px(x)} ${px(ground)}V${px(firstMarkY + dotY)}`} stroke={ink.ink2} stroke-width={1} />
          <circle cx={px(x)} cy={px(ground)} r={3.2} fill={ink.paper} stroke={ink.ink} stroke-width={1.6} />
        </g>
      ))}
      {marks.map(({ mark, x, dotY, anchor, textX, textY, small }) => (
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
          <Label x={textX} y={firstMarkY + textY} anchor={anchor} small={small}>
            {mark.text}
          </Label>
        </g>
      ))}
    </>
  );
}
