import { type DayAxis, dayAxis, xOfDay } from '../drawing/day-axis.ts';
import type { Point } from '../drawing/path.ts';
import { type as font, lineHeight } from '../drawing/picture.tsx';
import { boldWidth, textWidth } from '../drawing/text-fit.ts';
import { wordsBox } from '../drawing/words-box.ts';
import { type PlacedMark, placeMarks } from './place-marks.ts';
import { type PlacedWork, placeWork } from './place-work.ts';
import type { CommonScale, CropLine, YearLineProps } from './year-line-props.ts';

/** Hours at the foot and the top of the ridge: the same for most places, so that two of them can be compared. */
export const usualHours = { low: 7, high: 17 } as const;

/** Where things of a year line stand, px. */
export type YearLayout = {
  axis: DayAxis;
  /** Feet of the words over the picture: the key of rain, and today, under it where both find no room in a line. */
  keyY: number;
  todayY: number;
  skyTop: number;
  /** y of the lowest and the highest day length drawn. */
  ground: number;
  ridgeTop: number;
  soilBottom: number;
  monthsY: number;
  /** Feet of the numbers of work; its row is there where there is work. */
  workY: number;
  work: PlacedWork[];
  firstMarkY: number;
  marks: PlacedMark[];
  height: number;
  lead: YearLineProps['lead'];
  common: CommonScale | null;
  /** Waves of heat over the hottest days, and where on the axis they are. */
  waves: number;
  shimmer: { wave: number; from: number; to: number }[];
  /** Lines of words over the waves, and how far over the ridge both reach. */
  heatLines: number;
  overHeat: number;
  yOfHours: (hours: number) => number;
  /** The ridge, thinned for drawing. */
  ridge: Point[];
  /** Where rain ends: the ridge, or the water above it. */
  surfaceY: (index: number) => number;
  /** The same at an x. */
  surfaceAt: (x: number) => number;
};

/** A mean daily maximum from this on is hot for an onion, °C (memory: growth falls off above 27–30 °C). */
export const hotC = 30;
/** One wave of heat is drawn from there on, another for each of these, °C. */
const waveC = 2.5;
const mostWaves = 4;
export const waveRow = 6;
/** Narrower waves than these are not drawn, px. */
const leastWave = 6;

const dayStep = 3;
const workRow = 32;

/** Of years under each other, px: the ridge, and the soil under it. */
const lowRidge = { roomy: 104, narrow: 84 } as const;
const lowSoil = 30;

export function yearLayout(
  props: Omit<YearLineProps, 'id' | 'summary' | 'note' | 'months' | 'rainMm' | 'frostShare' | 'frostText'>,
): YearLayout {
  const { width, firstDay, sunUpH, highC, need, lead, crop, today, common = null } = props;
  const axis = dayAxis(firstDay, sunUpH.length, width);
  const low = common?.lowH ?? Math.min(usualHours.low, ...sunUpH);
  const high = common?.highH ?? Math.max(usualHours.high, ...sunUpH);
  const roomy = width >= 600;
  const lines = (text: string) => wordsBox({ text, x: 0, ...axis }).lines.length;
  const overSky = today
    ? textWidth(props.rainText, font.small) + textWidth(today.text, font.text * boldWidth) + 14
    : 0;
  const keyY = 14;
  const todayY = overSky > axis.right - axis.left ? keyY + lineHeight : keyY;
  const skyTop = common ? 2 : todayY + 10;
  const hottest = Math.max(...highC);
  const waves = hottest < hotC ? 0 : Math.min(mostWaves, 1 + Math.floor((hottest - hotC) / waveC));
  const shimmer = Array.from({ length: waves }, (_, wave) =>
    runsOf(highC.length, (i) => highC[i] >= hotC + wave * waveC).map(({ first, last }) => ({
      wave,
      from: xOfDay(axis, firstDay + first),
      to: xOfDay(axis, firstDay + last + 1),
    })),
  )
    .flat()
    .filter(({ from, to }) => to - from >= leastWave);
  const heatLines = shimmer.length > 0 ? lines(props.heatText) : 0;
  const overHeat = heatLines > 0 ? waves * waveRow + heatLines * lineHeight : 0;
  const peakLines = Math.max(
    1,
    ...props.dayTexts.filter(({ place }) => place === 'peak').map(({ text }) => lines(text)),
  );
  // room for the words of heat over those of the longest day
  const wordsRoom = (lead === 'days' ? overHeat : 0) + (peakLines - 1) * lineHeight;
  const sky = common?.skyPx ?? wordsRoom + (lead === 'weather' ? (roomy ? 70 : 60) : roomy ? 54 : 46);
  const ridgeTop = skyTop + sky;
  const ground =
    ridgeTop +
    (common ? lowRidge[roomy ? 'roomy' : 'narrow'] : (roomy ? 170 : 140) * (lead === 'weather' ? 0.8 : 1));
  const soilBottom = ground + (common ? lowSoil : crop ? 40 : 26);
  const monthsY = soilBottom + 18;
  const work = placeWork(crop?.work ?? [], axis);
  const workY = monthsY + (work.length > 0 ? workRow : 0);
  const firstMarkY = workY + 20;
  const marks = placeMarks(common ? [] : (crop?.marks ?? []), axis);
  const yOfHours = (hours: number) => ground - ((hours - low) / (high - low)) * (ground - ridgeTop);
  const waterY = need ? Math.min(ground, Math.max(ridgeTop, yOfHours(need.hours))) : ground;
  const ridge: Point[] = [];
  for (let i = 0; i < sunUpH.length; i += dayStep)
    ridge.push([xOfDay(axis, firstDay + i), yOfHours(sunUpH[i])]);
  ridge.push([axis.right, yOfHours(sunUpH[sunUpH.length - 1])]);
  const surfaceY = (index: number) => Math.min(yOfHours(sunUpH[index]), waterY);
  return {
    axis,
    keyY,
    todayY,
    skyTop,
    ground,
    ridgeTop,
    soilBottom,
    monthsY,
    workY,
    work,
    firstMarkY,
    marks: marks.placed,
    height: marks.placed.length > 0 ? firstMarkY + marks.height - 8 : workY + 8,
    yOfHours,
    lead,
    common,
    waves,
    shimmer,
    heatLines,
    overHeat,
    ridge,
    surfaceY,
    surfaceAt: (x) => {
      const index = Math.floor(((x - axis.left) / (axis.right - axis.left)) * axis.days);
      return surfaceY(Math.max(0, Math.min(axis.days - 1, index)));
    },
  };
}

export function waterLevel(layout: YearLayout, needHours: number): number {
  return Math.min(layout.ground, Math.max(layout.ridgeTop - 8, layout.yOfHours(needHours)));
}

/** The stairs of leaves end a little below the ridge's top at this many; more leaves make lower steps. */
const usualLeaves = 13;
const partOfRidge = 0.9;
/** A bulb this wide fills the soil's depth, mm; a wider one is drawn to its own scale. */
const usualBulbMm = 90;

/** Leaves that reach the top of the stairs. */
export function leavesHigh({ leaves }: Pick<CropLine, 'leaves'>): number {
  return Math.max(usualLeaves, ...leaves.map(({ made }) => made));
}

/** The bulb that fills the soil, mm across. */
export function bulbsWide({ bulb }: Pick<CropLine, 'bulb'>): number {
  return Math.max(usualBulbMm, ...bulb.map(({ acrossMm }) => acrossMm));
}

/** y of so many leaves. */
export function stepHeights(
  { lead, ridgeTop, ridge, ground, common }: YearLayout,
  crop: Pick<CropLine, 'leaves'>,
): (made: number) => number {
  const most = common?.leaves ?? leavesHigh(crop);
  const top = lead === 'weather' || common ? ridgeTop : Math.min(...ridge.map(([, y]) => y));
  return (made) => ground - (made / most) * partOfRidge * (ground - top);
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
