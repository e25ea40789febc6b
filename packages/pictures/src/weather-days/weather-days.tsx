import { dayAxis, xOfDay } from '../drawing/day-axis.ts';
import { ink } from '../drawing/ink.ts';
import { MonthNames } from '../drawing/month-names.tsx';
import { linePath, type Point, px } from '../drawing/path.ts';
import { Label, Picture, type } from '../drawing/picture.tsx';
import { rainStrokes } from '../drawing/rain-strokes.ts';
import { textWidth } from '../drawing/text-fit.ts';
import type { WeatherDaysProps } from './weather-days-props.ts';

const keyY = 14;
/** Foot of a row of words over the picture, px. */
const keyRow = 24;
/** Room for rain over the warmest day, px. */
const rainRoom = 44;
const pad = 6;
/** Between two of the words over the picture, px. */
const keyGap = 16;
/** Room for what the levels say, px. */
const degreesRoom = 46;

/**
 * Weather day by day: from the night's lowest to the day's highest as one band, over what is usual there; rain falls on
 * it from above. Where nothing was measured the band is broken.
 */
export function WeatherDays(props: WeatherDaysProps) {
  const { width, firstDay, lowC, highC, rainMm, usualLowC, usualHighC, levels, forecast } = props;
  const days = lowC.length;
  const axis = { ...dayAxis(firstDay, days, width), left: degreesRoom };
  // where the three don't stand side by side, the two of the bands have a row of their own
  const keysWidth = textWidth(props.rainText + props.measuredText + props.usualText, type.small);
  const isOneRow = pad + keysWidth + 2 * keyGap <= axis.right;
  const bandKeyY = isOneRow ? keyY : keyY + keyRow - pad;
  const skyTop = isOneRow ? keyRow : 2 * keyRow - pad;
  const top = skyTop + rainRoom;
  const foot = top + (width >= 600 ? 190 : 160);
  const all = [...lowC, ...highC, ...usualLowC, ...usualHighC].filter((value) => value !== null);
  const [least, most] = [Math.min(...all), Math.max(...all)];
  const yOf = (tempC: number) => foot - ((tempC - least) / Math.max(1, most - least)) * (foot - top);
  const at = (index: number, tempC: number): Point => [xOfDay(axis, firstDay + index + 0.5), yOf(tempC)];
  const isForecast = (index: number) => forecast !== null && firstDay + index >= forecast.from;
  const came = bandsOf(lowC, highC, (index) => !isForecast(index));
  const coming = bandsOf(lowC, highC, isForecast);
  const usual = usualLowC.map((_, index) => index);
  const shownLevels = levels.filter(({ tempC }) => tempC >= least && tempC <= most);
  return (
    <Picture name="weather-days" width={width} height={foot + 34} summary={props.summary}>
      <path
        d={`${linePath(usual.map((index) => at(index, usualHighC[index])))}L${linePath(
          usual.map((index) => at(index, usualLowC[index])).reverse(),
        ).slice(1)}Z`}
        fill={ink.skin2}
        fill-opacity={0.4}
      />
      {shownLevels.map(({ tempC, isFrost }) => (
        <path
          key={tempC}
          d={`M${px(axis.left)} ${px(yOf(tempC))}H${px(axis.right)}`}
          stroke={isFrost ? ink.sky : ink.line}
          stroke-width={isFrost ? 1.4 : 1}
          stroke-dasharray={isFrost ? '5 4' : undefined}
        />
      ))}
      {came.map((band) => (
        <path
          key={band[0]}
          d={bandPath(band, (index) => [at(index, lowC[index]!), at(index, highC[index]!)])}
          fill={ink.leaf}
          fill-opacity={0.75}
          stroke={ink.leaf}
          stroke-width={1.2}
          stroke-linejoin="round"
        />
      ))}
      {coming.map((band) => (
        <path
          key={band[0]}
          d={bandPath(band, (index) => [at(index, lowC[index]!), at(index, highC[index]!)])}
          fill={ink.leaf}
          fill-opacity={0.15}
          stroke={ink.leaf}
          stroke-width={1.2}
          stroke-dasharray="3 3"
        />
      ))}
      <path
        d={rainStrokes(
          rainMm.map((amount) => amount ?? 0),
          (index) => xOfDay(axis, firstDay + index),
          skyTop,
          () => top - 2,
        )}
        stroke={ink.sky}
        stroke-width={1.1}
        stroke-linecap="round"
        fill="none"
      />
      {forecast && (
        <Forecast {...forecast} x={xOfDay(axis, forecast.from)} right={axis.right} top={skyTop} foot={foot} />
      )}
      <path d={`M${px(axis.left)} ${px(foot + pad)}H${px(axis.right)}`} stroke={ink.ink2} />
      {shownLevels.map(({ tempC, text }) => (
        <Label key={tempC} x={axis.left - 6} y={yOf(tempC) + 4} anchor="end" small fill={ink.ink2}>
          {text}
        </Label>
      ))}
      <Label x={pad} y={keyY} small fill={ink.ink2}>
        {props.rainText}
      </Label>
      <Label
        x={axis.right - textWidth(props.usualText, type.small) - keyGap}
        y={bandKeyY}
        anchor="end"
        small
        fill={ink.leaf}
      >
        {props.measuredText}
      </Label>
      <Label x={axis.right} y={bandKeyY} anchor="end" small fill={ink.skin}>
        {props.usualText}
      </Label>
      <MonthNames axis={axis} names={props.months} tickY={foot + pad} textY={foot + pad + 18} />
    </Picture>
  );
}

type ForecastProps = { text: string; x: number; right: number; top: number; foot: number };

function Forecast({ text, x, right, top, foot }: ForecastProps) {
  const isRoom = x + textWidth(text, type.small) + 6 <= right;
  return (
    <>
      <path d={`M${px(x)} ${px(top)}V${px(foot + pad)}`} stroke={ink.ink} stroke-dasharray="1 4" />
      <Label x={isRoom ? x + 4 : x - 4} y={foot} anchor={isRoom ? 'start' : 'end'} small>
        {text}
      </Label>
    </>
  );
}

/** Runs of days, by their indices, with both temperatures; a day alone is a run. */
function bandsOf(
  lowC: readonly (number | null)[],
  highC: readonly (number | null)[],
  isOne: (index: number) => boolean,
): number[][] {
  const bands: number[][] = [];
  for (let index = 0; index < lowC.length; index++) {
    if (lowC[index] === null || highC[index] === null || !isOne(index)) continue;
    const band = bands.at(-1);
    if (band?.at(-1) === index - 1) band.push(index);
    else bands.push([index]);
  }
  return bands;
}

function bandPath(band: readonly number[], ends: (index: number) => [Point, Point]): string {
  const upper = band.map((index) => ends(index)[1]);
  const lower = band.map((index) => ends(index)[0]).reverse();
  return `${linePath([...upper, ...lower])}Z`;
}
