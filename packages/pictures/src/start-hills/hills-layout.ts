import { type DayAxis, dayAtX, dayAxis, xOfDay } from '../drawing/day-axis.ts';
import { type Point, px } from '../drawing/path.ts';
import { type as font, lineHeight } from '../drawing/picture.tsx';
import { wrapText } from '../drawing/text-fit.ts';
import { type Barred, barredStretches } from './barred.ts';
import { type KeyEntry, type PlacedWord, placeKey, placeWords } from './hill-words.ts';
import { type HillStart, type StartHillsProps, type Trouble, troubles } from './start-hills-props.ts';

export const hillHeight = 96;
/** Above it the start is held, and a line of words is written. */
const top = 60;
const ground = top + hillHeight;
const bottom = ground + hillHeight;
/** From words to what stands under them, and over them to what stands above, px. */
const underWords = 8;
const overWords = 5;

/** Heights of the parts one under the other, px, and the words over the two lowest. */
type HillsParts = {
  top: number;
  ground: number;
  bottom: number;
  sizeLines: readonly string[];
  sizeTop: number;
  sizeBottom: number;
  leavesLines: readonly string[];
  leavesTop: number;
  leavesBottom: number;
};

export function hillsParts({
  width,
  sizeText,
  leavesText,
}: Pick<StartHillsProps, 'width' | 'sizeText' | 'leavesText'>): HillsParts {
  const { left, right } = dayAxis(0, 1, width);
  const sizeLines = wrapText(sizeText, right - left, font.small);
  const leavesLines = wrapText(leavesText, right - left, font.small);
  const roomOf = (lines: readonly string[]) => overWords + lines.length * lineHeight + underWords;
  const sizeTop = bottom + roomOf(sizeLines);
  const sizeBottom = sizeTop + 50;
  const leavesTop = sizeBottom + roomOf(leavesLines);
  const leavesBottom = leavesTop + 36;
  return { top, ground, bottom, sizeLines, sizeTop, sizeBottom, leavesLines, leavesTop, leavesBottom };
}

/** Feet of the lines over a part, px. */
export function overPart(lines: readonly string[], partTop: number): { text: string; y: number }[] {
  return lines.map((text, i) => ({ text, y: partTop - underWords - (lines.length - 1 - i) * lineHeight }));
}

/** A line from a height to the foot of the picture that leaves out its lines of words; an SVG path. */
export function downThrough(x: number, from: number, parts: HillsParts): string {
  const { sizeLines, sizeTop, leavesLines, leavesTop, leavesBottom } = parts;
  const gap = (lines: readonly string[], partTop: number) =>
    `V${px(partTop - underWords - lines.length * lineHeight + 2)}M${px(x)} ${px(partTop - underWords + 5)}`;
  return `M${px(x)} ${px(from)}${gap(sizeLines, sizeTop)}${gap(leavesLines, leavesTop)}V${px(leavesBottom)}`;
}

/** Where things of the hills stand, px. */
export type HillsLayout = HillsParts & {
  axis: DayAxis;
  /** Feet of the words for today, between the foot and the months. */
  todayY: number;
  monthsY: number;
  keyTop: number;
  height: number;
  hill: Point[];
  hollows: { trouble: Trouble; upper: Point[]; lower: Point[] }[];
  /** Stretches in which nobody starts. */
  barred: Barred[];
  /** Words in hill and hollows. */
  words: PlacedWord[];
  /** Hollows too small for their words; y from {@link HillsLayout.keyTop}. */
  key: KeyEntry[];
};

export function hillsLayout(
  props: Pick<
    StartHillsProps,
    | 'width'
    | 'firstDay'
    | 'days'
    | 'starts'
    | 'today'
    | 'goodText'
    | 'troubleTexts'
    | 'sizeText'
    | 'leavesText'
  >,
): HillsLayout {
  const { width, firstDay, days } = props;
  const axis = dayAxis(firstDay, days, width);
  const starts = closedYear(props.starts, firstDay, days);
  const x = (start: HillStart) => xOfDay(axis, start.day);
  const filled = starts.map(() => 0);
  const hollows = troubles.flatMap((trouble) => {
    if (starts.every(({ shares }) => shares[trouble] === 0)) return [];
    const upper = starts.map((start, i): Point => [x(start), ground + filled[i] * hillHeight]);
    starts.forEach(({ shares }, i) => {
      filled[i] = Math.min(1, filled[i] + shares[trouble]);
    });
    const lower = starts.map((start, i): Point => [x(start), ground + filled[i] * hillHeight]);
    return [{ trouble, upper, lower }];
  });
  const hill = starts.map((start): Point => [x(start), ground - start.shares.good * hillHeight]);
  // words belong where something may be started
  const free = (points: readonly Point[], flat: readonly Point[]) =>
    points.map((point, i) => (starts[i].barredBy === null ? point : flat[i]));
  const level = hill.map(([at]): Point => [at, ground]);
  const named = hollows
    .map(({ trouble, upper, lower }) => ({
      trouble,
      text: props.troubleTexts[trouble],
      upper,
      lower: free(lower, upper),
    }))
    .filter(({ upper, lower }) => lower.some(([, y], i) => y > upper[i][1]));
  const { words, unnamed } = placeWords(
    axis,
    { text: props.goodText, upper: free(hill, level), lower: level },
    named,
  );
  const barred = barredStretches(starts, axis);
  const parts = hillsParts(props);
  const todayY = parts.leavesBottom + 15;
  const monthsY = parts.leavesBottom + 20 + (props.today ? lineHeight : 0);
  const key = placeKey(axis, [
    ...unnamed.map((trouble) => ({ trouble, text: props.troubleTexts[trouble] })),
    ...unsaid(barred).map((text) => ({ trouble: 'barred' as const, text })),
  ]);
  return {
    ...parts,
    axis,
    todayY,
    monthsY,
    keyTop: monthsY + 12,
    height: monthsY + 8 + (key.height > 0 ? key.height + 8 : 0),
    hill,
    hollows,
    barred,
    words,
    key: key.key,
  };
}

/** Reasons that stand in none of their stretches. */
function unsaid(barred: readonly Barred[]): string[] {
  const said = new Set(barred.flatMap(({ text, lines }) => (lines === null ? [] : text)));
  return [...new Set(barred.map(({ text }) => text))].filter((text) => !said.has(text));
}

/** The starts with the year closed at both ends: the last stands before the first and the first after the last. */
export function closedYear(starts: readonly HillStart[], firstDay: number, days: number): HillStart[] {
  if (starts.length < 2) return [...starts];
  const first = starts[0];
  const last = starts[starts.length - 1];
  // of two neighbours across the end the nearer one speaks for it
  const nearer = first.day - firstDay <= firstDay - (last.day - days) ? first : last;
  const closed = [...starts];
  if (first.day > firstDay) closed.unshift({ ...nearer, day: firstDay });
  if (last.day < firstDay + days) closed.push({ ...nearer, day: firstDay + days });
  return closed;
}

/** Day under a pointer, from x in px of the picture's own width; for dragging the marker. */
export function hillsDayAt(props: Pick<StartHillsProps, 'width' | 'firstDay' | 'days'>, x: number): number {
  return dayAtX(dayAxis(props.firstDay, props.days, props.width), x);
}

/** x of a day in px of the picture's own width. */
export function hillsXOf(props: Pick<StartHillsProps, 'width' | 'firstDay' | 'days'>, day: number): number {
  return xOfDay(dayAxis(props.firstDay, props.days, props.width), day + 0.5);
}

export function yOnScale(value: number, low: number, high: number, top: number, bottom: number): number {
  return bottom - ((value - low) / Math.max(1e-9, high - low)) * (bottom - top);
}
