import type { Speaker } from '@neckfall/words';
import type { MonthFacts } from '../facts/index.ts';

/** Where the longest day is shorter than this, seasons are those of rain and heat (as at 23.5°, computed), h. */
const tropicsLongestH = 13.6;
/** Months named of each kind. */
const named = 3;

/** In the tropics what leads is rain and heat; null elsewhere. @param sunUpH of the days of a year, h */
export function tropicsSentence(
  sunUpH: Iterable<number>,
  months: readonly Pick<MonthFacts, 'month' | 'rainMm' | 'tempMaxC'>[],
  { say, dayLength, all, month }: Speaker,
): string | null {
  const longest = Math.max(...sunUpH);
  if (longest > tropicsLongestH) return null;
  const first = (key: 'rainMm' | 'tempMaxC', sign: 1 | -1) =>
    all(
      [...months]
        .sort((a, b) => sign * (a[key] - b[key]))
        .slice(0, named)
        .sort((a, b) => a.month - b.month)
        .map((row) => month(row.month)),
    );
  return say('app.where.tropics', {
    shortest: dayLength(Math.min(...sunUpH)),
    longest: dayLength(longest),
    driest: first('rainMm', 1),
    hottest: first('tempMaxC', -1),
  });
}
