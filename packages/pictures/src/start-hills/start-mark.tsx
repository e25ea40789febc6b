import { type DayAxis, dayAxis, xOfDay } from '../drawing/day-axis.ts';
import { ink } from '../drawing/ink.ts';
import { px } from '../drawing/path.ts';
import { type as font, Label, wideAs } from '../drawing/picture.tsx';
import { boldWidth, textWidth } from '../drawing/text-fit.ts';
import { downThrough, hillsParts } from './hills-layout.ts';
import type { StartHillsProps } from './start-hills-props.ts';

type MarkProps = { axis: DayAxis; parts: ReturnType<typeof hillsParts>; day: number; text: string };

/** The start chosen, held by an onion. */
export function StartMark({ axis, parts, day, text }: MarkProps) {
  if (day < axis.firstDay || day >= axis.firstDay + axis.days) return null;
  const x = xOfDay(axis, day + 0.5);
  const half = textWidth(text, font.text * boldWidth) / 2 + 2;
  const at = (dx: number, y: number) => `${px(x + dx)} ${px(y)}`;
  const onion =
    `M${at(0, 39)}C${at(-13, 39)} ${at(-13, 25)} ${at(-3, 22)}Q${at(-1, 20)} ${at(0, 16)}` +
    `Q${at(1, 20)} ${at(3, 22)}C${at(13, 25)} ${at(13, 39)} ${at(0, 39)}Z`;
  return (
    <>
      <path d={downThrough(x, 38, parts)} stroke={ink.ink} stroke-width={2} />
      <path class="start-handle" d={onion} fill={ink.skin2} stroke={ink.ink} stroke-width={1.6} />
      <Label x={Math.min(axis.right - half, Math.max(axis.left + half, x))} y={12} anchor="middle" bold>
        {text}
      </Label>
    </>
  );
}

type OverlayProps = Pick<StartHillsProps, 'width' | 'firstDay' | 'days' | 'sizeText' | 'leavesText'> & {
  day: number;
  text: string;
};

/** The same on a sheet of its own, to be laid over hills without it: what is moved is drawn anew, the hills are not. */
export function StartMarkOverlay({ firstDay, days, day, text, ...hills }: OverlayProps) {
  const { width } = hills;
  const parts = hillsParts(hills);
  return (
    <svg
      class="picture-svg start-mark"
      aria-hidden="true"
      viewBox={`0 0 ${px(width)} ${px(parts.leavesBottom)}`}
      width={px(width)}
      height={px(parts.leavesBottom)}
      font-size={font.text}
      style={wideAs(width)}
    >
      <StartMark axis={dayAxis(firstDay, days, width)} parts={parts} day={day} text={text} />
    </svg>
  );
}
