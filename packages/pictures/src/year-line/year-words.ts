import { xOfDay } from '../drawing/day-axis.ts';
import { lineHeight } from '../drawing/picture.tsx';
import { isApart, standingAt, type WordsBox, wordsBox } from '../drawing/words-box.ts';
import { runsOf, stepHeights, waterLevel, waveRow, type YearLayout } from './year-layout.ts';
import type { YearLineProps } from './year-line-props.ts';

/**
 * The words that stand in a year line, each in a place of its own. Where a narrow picture has no room for all, the
 * later ones are left to what is said beside it.
 */
export type YearWords = {
  days: WordsBox[];
  heat: WordsBox | null;
  leaves: WordsBox | null;
  need: WordsBox | null;
};

export function yearWords(layout: YearLayout, props: YearLineProps): YearWords {
  const taken: WordsBox[] = [];
  const ifApart = (words: WordsBox | null) => {
    if (words === null || !taken.every((other) => isApart(other, words))) return null;
    taken.push(words);
    return words;
  };
  const days = props.dayTexts.flatMap((text) => ifApart(dayWords(layout, props.sunUpH, text)) ?? []);
  const heat = ifApart(heatWords(layout, props));
  const leaves = ifApart(leavesWords(layout, props));
  return { days, heat, leaves, need: needWords(layout, props, taken) };
}

export function allWords({ days, heat, leaves, need }: YearWords): WordsBox[] {
  return [...days, heat, leaves, need].filter((words) => words !== null);
}

function dayWords(
  layout: YearLayout,
  sunUpH: readonly number[],
  { day, text, place }: YearLineProps['dayTexts'][number],
): WordsBox {
  const { axis, ground } = layout;
  const words = wordsBox({ text, x: xOfDay(axis, day), ...axis });
  const ridgeY = layout.yOfHours(sunUpH[Math.min(sunUpH.length - 1, Math.max(0, day - axis.firstDay))]);
  if (place === 'peak') return standingAt(words, ridgeY - 8 - layout.overHeat, 'last');
  if (place === 'foot') return standingAt(words, ground - 6, 'last');
  // a low trough has no room under it
  const isDeep = ground - ridgeY > 7 + words.lines.length * lineHeight;
  return isDeep ? standingAt(words, ridgeY + 16) : standingAt(words, ridgeY - 7, 'last');
}

/** Over the widest wave of heat. */
function heatWords({ axis, shimmer, waves, surfaceAt, heatLines }: YearLayout, { heatText }: YearLineProps) {
  const widest = shimmer.toSorted((a, b) => b.to - b.from - (a.to - a.from))[0];
  if (!widest || heatLines === 0) return null;
  const middle = (widest.from + widest.to) / 2;
  return standingAt(
    wordsBox({ text: heatText, x: middle, ...axis }),
    surfaceAt(middle) - 4 - waves * waveRow,
    'last',
  );
}

/** Over the highest step, and over counts beyond it. */
function leavesWords(layout: YearLayout, { crop }: YearLineProps): WordsBox | null {
  if (!crop?.leavesText) return null;
  const { axis, ground } = layout;
  const words = wordsBox({ ...crop.leavesText, x: xOfDay(axis, crop.leavesText.day), ...axis, bold: true });
  const yOf = stepHeights(layout, crop);
  const highest = Math.max(0, ...crop.leaves.map(({ made }) => made));
  const usualY = highest > 0 ? yOf(highest) - 6 : ground;
  const notches = crop.counted
    .filter(({ day }) => Math.abs(xOfDay(axis, day + 0.5) - words.x) < words.half + 8)
    .map(({ made }) => yOf(made) - 8)
    .filter((y) => y < usualY + 8);
  return standingAt(words, Math.min(usualY, ...notches), 'last');
}

/**
 * The need is written on the widest water, or under the line where the ridge stands out all year; where other words
 * stand there already, at the other end, or else over the line.
 */
function needWords(
  layout: YearLayout,
  { need, sunUpH }: YearLineProps,
  taken: readonly WordsBox[],
): WordsBox | null {
  if (!need) return null;
  const { axis } = layout;
  const waters = runsOf(sunUpH.length, (i) => sunUpH[i] < need.hours);
  const widest = waters.toSorted((a, b) => b.last - b.first - (a.last - a.first))[0] ?? {
    first: sunUpH.length - 60,
    last: sunUpH.length - 1,
  };
  const usual = xOfDay(axis, axis.firstDay + (widest.first + widest.last + 1) / 2);
  const other = usual < (axis.left + axis.right) / 2 ? axis.right : axis.left;
  const level = waterLevel(layout, need.hours);
  const at = (x: number) => wordsBox({ text: need.text, x, ...axis, bold: true });
  const places = [
    ...[usual, other].map((x) => standingAt(at(x), level + lineHeight)),
    ...[usual, other].map((x) => standingAt(at(x), level - 7, 'last')),
  ];
  return places.find((place) => taken.every((words) => isApart(words, place))) ?? null;
}
