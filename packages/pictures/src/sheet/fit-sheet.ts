import type { Handout } from '@neckfall/answers';
import { type Drawn, drawnOf, svgIn } from '../drawing/drawn.ts';
import { YearLine, type YearLineProps } from '../year-line/index.ts';
import { setSheet } from './set-sheet.ts';
import type { Measure, Sheet } from './sheet.ts';
import { gaps, leastScale, mostScale, type Paper, papers, pictureWidth } from './sheet-look.ts';
import { sparesOf, toldOn } from './sheet-of.ts';

/** All a year line needs but its id and width. */
export type SheetYear = Omit<YearLineProps, 'id' | 'width'>;

/** Browsers break and space lines a little otherwise than we do, pt. */
const reserve = 7;
const scaleStep = 0.01;

/**
 * A sheet that fits its page: set as large as it can be; where it is too long even small, the lines it can spare most are
 * left out, one after the other. What can't be spared is there whatever the size: the least scale is then gone below.
 */
export function fitSheet(handout: Handout, year: SheetYear, paper: Paper, measure: Measure): Sheet {
  const { note: caption, ...line } = year;
  const picture = pictureOf(line);
  const room = papers[paper].heightPt - gaps.margin - reserve;
  const at = (leftOut: number, scale: number) => ({
    language: handout.language,
    paper,
    scale,
    picture,
    ...toldOn(handout, caption, leftOut),
  });
  const fits = (leftOut: number, scale: number) => setSheet(at(leftOut, scale), measure).bottom <= room;
  const spares = sparesOf(handout, caption);
  // the largest size at which it fits, found by halving
  const largest = (leftOut: number) => {
    let [low, high] = [leastScale, mostScale];
    while (high - low > scaleStep) {
      const middle = (low + high) / 2;
      if (fits(leftOut, middle)) low = middle;
      else high = middle;
    }
    return low;
  };
  for (const [index, leftOut] of [0, ...spares].entries()) {
    if (fits(leftOut, leastScale)) return { ...at(leftOut, largest(leftOut)), leftOut: index };
  }
  const bare = spares.at(-1) ?? 0;
  let scale: number = leastScale;
  while (scale > 0.4 && !fits(bare, scale)) scale -= scaleStep;
  return { ...at(bare, scale), leftOut: spares.length };
}

/** Narrow enough for most phones, px. */
const phoneWidth = 340;

function pictureOf(line: Omit<SheetYear, 'note'>): Sheet['picture'] {
  const svg = drawn('sheet-year', pictureWidth);
  const [, , width, height] = svg.attributes.viewBox.split(' ').map(Number);
  return { summary: line.summary, svg, width, height, narrow: drawn('phone-year', phoneWidth) };

  function drawn(id: string, wide: number): Drawn {
    const found = svgIn(drawnOf(YearLine({ id, width: wide, note: null, ...line })));
    if (found === null) throw new Error('expected a picture of the year, got none');
    return found;
  }
}
