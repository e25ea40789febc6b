import { type DayAxis, monthSpans } from './day-axis.ts';
import { ink } from './ink.ts';
import { px } from './path.ts';
import { type as font, Label } from './picture.tsx';
import { textWidth } from './text-fit.ts';

/** Names of the months under an axis; every second or third where it is narrow. */
export function MonthNames(props: { axis: DayAxis; names: readonly string[]; tickY: number; textY: number }) {
  const { axis, names, tickY, textY } = props;
  const widest = Math.max(...names.map((name) => textWidth(name, font.small))) + 6;
  const every = Math.max(1, Math.ceil(widest / ((axis.right - axis.left) / (axis.days / 30.44))));
  return (
    <>
      {monthSpans(axis).map(({ month, from, to }, i) => (
        <g key={from}>
          <path d={`M${px(from)} ${px(tickY)}v5`} stroke={ink.ink2} />
          {i % every === 0 && to - from > widest / (every > 1 ? 2 : 1.2) && (
            <Label
              x={every > 1 ? from + 3 : (from + to) / 2}
              y={textY}
              anchor={every > 1 ? 'start' : 'middle'}
              small
              fill={ink.ink2}
            >
              {names[month - 1]}
            </Label>
          )}
        </g>
      ))}
    </>
  );
}
