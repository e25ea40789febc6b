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
const scaleStep = 0.005;

/**
 * A sheet that fits its page: set as large as it can be; where it is too long even small, the lines it can spare most are
 * left out, as many as it takes. What can't be spared is there whatever the size: the least scale is then gone below.
 */
export function fitSheet(handout: Handout, year: SheetYear, paper: Paper, measure: Measure): Sheet {
  const { note: caption, ...line } = year;
  const picture = pictureOf(line);
  const room = papers[paper].heightPt - gaps.margin - reserve;
  const sheetOf = (leftOut: ReadonlySet<number>, scale: number): Sheet => ({
    language: handout.language,
    paper,
    scale,
    picture,
    leftOut: leftOut.size,
    ...toldOn(handout, caption, leftOut),
  });
  const fits = (leftOut: ReadonlySet<number>, scale: number) =>
    setSheet(sheetOf(leftOut, scale), measure).bottom <= room;
  const spares = sparesOf(handout, caption);
  const scaleFor = (leftOut: ReadonlySet<number>, most: number, least: number) =>
    largest(most, least, (scale) => fits(leftOut, scale));
  const all = new Set(spares);
  // what can't be spared has to stand there, be it smaller than is good
  const least = fits(all, leastScale) ? leastScale : scaleFor(all, leastScale, tiniestScale);
  const leftOut = leastLeftOut(spares, (some) => fits(some, least));
  return sheetOf(leftOut, scaleFor(leftOut, mostScale, least));
}

const tiniestScale = 0.3;

/** What has to go, the first to go first; what finds room beside a longer column comes back. */
function leastLeftOut(
  spares: readonly number[],
  fits: (leftOut: ReadonlySet<number>) => boolean,
): ReadonlySet<number> {
  const leftOut = new Set<number>();
  for (const spare of spares) {
    if (fits(leftOut)) break;
    leftOut.add(spare);
  }
  for (const back of [...leftOut].reverse()) {
    leftOut.delete(back);
    if (!fits(leftOut)) leftOut.add(back);
  }
  return leftOut;
}

/** The largest scale at which it fits, found by halving; `low` where none is found. */
function largest(high: number, low: number, fits: (scale: number) => boolean): number {
  if (fits(high)) return high;
  let [most, least] = [high, low];
  while (most - least > scaleStep) {
    const middle = (most + least) / 2;
    if (fits(middle)) least = middle;
    else most = middle;
  }
  return least;
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
