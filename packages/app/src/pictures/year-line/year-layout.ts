import { type DayAxis, dayAxis, xOfDay } from '../day-axis.ts';
import type { Point } from '../path.ts';
import { type PlacedMark, placeMarks } from './place-marks.ts';
import type { YearLineProps } from './year-line-props.ts';

/** Hours at the foot and the top of the ridge: the same for most places, so that two of them can be compared. */
const usualHours = { low: 7, high: 17 } as const;

/** Where things of a year line stand, px. */
export type YearLayout = {
  axis: DayAxis;
  skyTop: number;
  /** y of the lowest and the highest day length drawn. */
  ground: number;
  ridgeTop: number;
  soilBottom: number;
  monthsY: number;
  firstMarkY: number;
  marks: PlacedMark[];
  height: number;
  lead: YearLineProps['lead'];
  /** Waves of heat over the hottest days. */
  waves: number;
  yOfHours: (hours: number) => number;
  /** The ridge, thinned for drawing. */
  ridge: Point[];
  /** Where rain ends: the ridge, or the water above it. */
  surfaceY: (index: number) => number;
};

/** A mean daily maximum from this on is hot for an onion, °C (memory: growth falls off above 27–30 °C). */
export const hotC = 30;
/** One wave of heat is drawn from there on, another for each of these, °C. */
export const waveC = 2.5;
const mostWaves = 4;
export const waveRow = 6;

const dayStep = 3;

export function yearLayout(
  props: Pick<YearLineProps, 'width' | 'firstDay' | 'sunUpH' | 'highC' | 'need' | 'lead' | 'crop' | 'today'>,
): YearLayout {
  const { width, firstDay, sunUpH, highC, need, lead, crop } = props;
  const axis = dayAxis(firstDay, sunUpH.length, width);
  const low = Math.min(usualHours.low, ...sunUpH);
  const high = Math.max(usualHours.high, ...sunUpH);
  const roomy = width >= 600;
  const skyTop = 24;
  const hottest = Math.max(...highC);
  const waves = hottest < hotC ? 0 : Math.min(mostWaves, 1 + Math.floor((hottest - hotC) / waveC));
  // room for the words of heat over those of the longest day
  const heatRoom = waves > 0 && lead === 'days' ? 14 + waves * waveRow : 0;
  const ridgeTop = skyTop + heatRoom + (lead === 'weather' ? (roomy ? 66 : 54) : roomy ? 40 : 34);
  const ground = ridgeTop + (roomy ? 170 : 140) * (lead === 'weather' ? 0.8 : 1);
  const soilBottom = ground + (crop ? 40 : 26);
  const monthsY = soilBottom + 17;
  const firstMarkY = monthsY + 20;
  const marks = placeMarks(crop?.marks ?? [], axis);
  const yOfHours = (hours: number) => ground - ((hours - low) / (high - low)) * (ground - ridgeTop);
  const waterY = need ? Math.min(ground, Math.max(ridgeTop, yOfHours(need.hours))) : ground;
  const ridge: Point[] = [];
  for (let i = 0; i < sunUpH.length; i += dayStep)
    ridge.push([xOfDay(axis, firstDay + i), yOfHours(sunUpH[i])]);
  ridge.push([axis.right, yOfHours(sunUpH[sunUpH.length - 1])]);
  return {
    axis,
    skyTop,
    ground,
    ridgeTop,
    soilBottom,
    monthsY,
    firstMarkY,
    marks: marks.placed,
    height: marks.placed.length > 0 ? firstMarkY + marks.height - 8 : monthsY + 8,
    yOfHours,
    lead,
    waves,
    ridge,
    surfaceY: (index) => Math.min(yOfHours(sunUpH[index]), waterY),
  };
}

/** Runs of consecutive days for which something holds, as first and last index. */
export function runsOf(days: number, holds: (index: number) => boolean): { first: number; last: number }[] {
  const runs: { first: number; last: number }[] = [];
  for (let i = 0; i < days; i++) {
    if (!holds(i)) continue;
    const run = runs.at(-1);
    if (run && run.last === i - 1) run.last = i;
    else runs.push({ first: i, last: i });
  }
  return runs;
}
