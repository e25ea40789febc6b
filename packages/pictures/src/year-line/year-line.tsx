import { xOfDay } from '../drawing/day-axis.ts';
import { ink } from '../drawing/ink.ts';
import { MonthNames } from '../drawing/month-names.tsx';
import { areaPath, linePath, type Point, px } from '../drawing/path.ts';
import { Label, lineHeight, Picture, type } from '../drawing/picture.tsx';
import { rainStrokes } from '../drawing/rain-strokes.ts';
import { boldWidth, textWidth } from '../drawing/text-fit.ts';
import { isClear, type WordsBox } from '../drawing/words-box.ts';
import { CropMarks, CropShape, MarkDots } from './crop-shape.tsx';
import { CropWork } from './crop-work.tsx';
import { Frost, FrostPattern, Heat } from './frost-and-heat.tsx';
import { waterLevel, type YearLayout, yearLayout } from './year-layout.ts';
import type { YearLineProps } from './year-line-props.ts';
import { allWords, yearWords } from './year-words.ts';

/**
 * The year of a place: day length as a ridge, what the onion needs as the water it must rise out of, rain and heat
 * above, frost in the ground, and if wanted a crop on it.
 */
export function YearLine(props: YearLineProps) {
  const { id, width, summary, need, today, crop, common } = props;
  const layout = yearLayout(props);
  const words = yearWords(layout, props);
  const inTheWay = allWords(words);
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
        {!common && (
          <path
            d={rainStrokes(
              props.rainMm,
              (i) => xOfDay(axis, axis.firstDay + i),
              skyTop,
              (i) => layout.surfaceY(i) - 3,
              (...box) => inTheWay.every((words) => isClear(words, ...box)),
            )}
            stroke={ink.sky}
            stroke-width={1.1}
            stroke-linecap="round"
            fill="none"
          />
        )}
        <Heat layout={layout} />
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
        <Words words={words.heat} fill={ink.alarm} />
        <Words words={words.leaves} fill={ink.leaf} />
        <Words words={words.need} />
        {words.days.map((said) => (
          <Words key={said.x} words={said} />
        ))}
        <MonthNames axis={axis} names={props.months} tickY={soilBottom} textY={layout.monthsY} />
        {!common && (
          <Label
            x={keyAtRight ? right : left}
            y={layout.keyY}
            anchor={keyAtRight ? 'end' : 'start'}
            small
            fill={ink.ink2}
          >
            {props.rainText}
          </Label>
        )}
        {crop && common && <MarkDots layout={layout} crop={crop} />}
        {crop && <CropMarks layout={layout} marks={layout.marks} months={props.months} />}
        <CropWork layout={layout} />
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

function Words({ words, fill = ink.ink }: { words: WordsBox | null; fill?: string }) {
  if (words === null) return null;
  const { lines, x, y, bold } = words;
  return (
    <>
      {lines.map((line, i) => (
        <Label key={line} x={x} y={y + i * lineHeight} anchor="middle" small={!bold} bold={bold} fill={fill}>
          {line}
        </Label>
      ))}
    </>
  );
}

type TodayProps = {
  layout: YearLayout;
  day: number;
  text: string;
  /** What stands on the same line, at one end of it. */
  beside: { text: string; isAtRight: boolean };
};

function Today({ layout, day, text, beside }: TodayProps) {
  const { axis, keyY, todayY, skyTop, soilBottom } = layout;
  if (day < axis.firstDay || day >= axis.firstDay + axis.days) return null;
  const x = xOfDay(axis, day + 0.5);
  const half = textWidth(text, type.text * boldWidth) / 2 + 2;
  const taken = todayY === keyY ? textWidth(beside.text, type.small) + 10 : 0;
  const least = axis.left + half + (beside.isAtRight ? 0 : taken);
  const most = axis.right - half - (beside.isAtRight ? taken : 0);
  return (
    <>
      <path
        d={`M${px(x)} ${px(skyTop - 4)}V${px(soilBottom)}`}
        stroke={ink.ink}
        stroke-width={1.6}
        stroke-dasharray="1 4"
        stroke-linecap="round"
      />
      <Label
        x={Math.max(axis.left + half, Math.min(most, Math.max(least, x)))}
        y={todayY}
        anchor="middle"
        bold
      >
        {text}
      </Label>
    </>
  );
}
