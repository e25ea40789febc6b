import { type DayAxis, monthSpans } from './day-axis.ts';
import { ink } from './ink.ts';
import { px } from './path.ts';
import { type as font, Label } from './picture.tsx';
import { textWidth } from './text-fit.ts';

type MonthName = { text: string; left: number; right: number };

/** Where the names of the months stand under an axis; every second or third where it is narrow. */
export function monthNames(axis: DayAxis, names: readonly string[]): MonthName[] {
  const widest = Math.max(...names.map((name) => textWidth(name, font.small))) + 6;
  const every = Math.max(1, Math.ceil(widest / ((axis.right - axis.left) / (axis.days / 30.44))));
  return monthSpans(axis).flatMap(({ month, from, to }, i) => {
    const text = names[month - 1];
    const wide = textWidth(text, font.small);
    const isRoom = every > 1 ? from + 3 + wide <= axis.right : to - from > widest / 1.2;
    if (i % every !== 0 || !isRoom) return [];
    const left = every > 1 ? from + 3 : (from + to - wide) / 2;
    return [{ text, left, right: left + wide }];
  });
}

/** Months under an axis: where each begins, and their names. */
export function MonthNames(props: { axis: DayAxis; names: readonly string[]; tickY: number; textY: number }) {
  const { axis, names, tickY, textY } = props;
  return (
    <>
      {monthSpans(axis).map(({ from }) => (
        <path key={from} d={`M${px(from)} ${px(tickY)}v5`} stroke={ink.ink2} />
      ))}
      {monthNames(axis, names).map(({ text, left, right }) => (
        <Label key={left} x={(left + right) / 2} y={textY} anchor="middle" small fill={ink.ink2}>
          {text}
        </Label>
      ))}
    </>
  );
}
