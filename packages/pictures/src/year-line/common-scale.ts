import { type as font } from '../drawing/picture.tsx';
import { bulbsWide, leavesHigh, usualHours, yearLayout } from './year-layout.ts';
import type { CommonScale, YearLineProps } from './year-line-props.ts';
import { allWords, yearWords } from './year-words.ts';

/** Room over the words that stand highest, px. */
const overWords = 4;
const leastSky = 10;

/**
 * What years that stand under each other share, so that they can be compared by eye: the hours at the foot and the
 * top of the ridge, the leaves and bulbs that reach as far, and the sky that the fullest of them needs.
 *
 * @param width px, the same for all
 */
export function commonScaleOf(
  lines: readonly Omit<YearLineProps, 'id' | 'width'>[],
  width: number,
): CommonScale {
  const least = (of: (line: (typeof lines)[number]) => number, usual: number) =>
    Math.min(usual, ...lines.map(of));
  const most = (of: (line: (typeof lines)[number]) => number, usual: number) =>
    Math.max(usual, ...lines.map(of));
  const scale: CommonScale = {
    lowH: least(({ sunUpH }) => Math.min(...sunUpH), usualHours.low),
    highH: most(({ sunUpH }) => Math.max(...sunUpH), usualHours.high),
    leaves: most(({ crop }) => (crop ? leavesHigh(crop) : 0), 0),
    bulbMm: most(({ crop }) => (crop ? bulbsWide(crop) : 0), 0),
    skyPx: 0,
  };
  // laid out without a sky, words show how far they reach into one
  const tops = lines.flatMap((line) => {
    const props = { id: '', width, ...line, common: scale };
    const layout = yearLayout(props);
    return [
      Math.min(...layout.ridge.map(([, y]) => y)) - layout.overHeat,
      ...allWords(yearWords(layout, props)).map(({ y }) => y - font.small),
    ];
  });
  return { ...scale, skyPx: Math.max(leastSky, Math.ceil(overWords - Math.min(...tops, 0))) };
}
