import { reach } from './reach.ts';

/** Dates worth this much less than the best are as good as it: a little more than one season in thirty. */
const asGoodWithin = 0.04;

/** First and last date of a stretch in a year taken as a circle: `first` may be negative, `last` beyond the year. */
export type Stretch = { first: number; last: number };

/**
 * The dates about the best one that are as good as it, so that a start may slip either way. A stretch
 * reaches a quarter of the year either way; where it would go on both ways, no date stands out, and the best is left
 * alone.
 *
 * @param best index of the best date, 0…dates − 1
 */
export function bestStretch(best: number, dates: number, worthAt: (date: number) => number): Stretch {
  const top = worthAt(best);
  const isAsGood = (date: number) => worthAt((date + dates) % dates) >= top - asGoodWithin;
  const before = reach(dates / 4, (far) => isAsGood(best - far));
  const after = reach(dates / 4, (far) => isAsGood(best + far));
  return before >= dates / 4 && after >= dates / 4
    ? { first: best, last: best }
    : { first: best - before, last: best + after };
}

/** Middle of a stretch, as a date of the circle. */
export function middleOf({ first, last }: Stretch, dates: number): number {
  return (Math.round((first + last) / 2) + dates) % dates;
}
