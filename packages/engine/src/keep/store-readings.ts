import { clamp, mean } from '../math/index.ts';

/** A value that was read on a day of a climate year. */
export type DayReading = { day: number; value: number };

/**
 * How far a store may differ from the usual one, standard deviations in the unit of what is read: of its level, of its swing
 * as a share of the usual, and of a reading from the mean of its days. All memory, adjustable.
 */
export type StorePrior = { level: number; swing: number; reading: number };

/**
 * The usual year of a store drawn to what was read there: shifted, and stretched about the middle of the days read, by least
 * squares under the prior. One reading stretches nothing, since it is that middle. No day moves further than any reading lay
 * from the usual: outside the seasons that were read, nobody knows.
 */
export function drawnTo(
  usual: Float64Array,
  readings: readonly DayReading[],
  prior: StorePrior,
): Float64Array {
  if (readings.length === 0) return usual;
  const at = readings.map(({ day }) => usual[day]);
  const off = readings.map(({ value }, i) => value - at[i]);
  const middle = mean(at);
  const spread = at.map((value) => value - middle);
  const sum = (values: readonly number[]) => values.reduce((all, value) => all + value, 0);
  const noise = prior.reading ** 2;
  const shift = sum(off) / (readings.length + noise / prior.level ** 2);
  const stretch =
    sum(spread.map((from, i) => from * off[i])) /
    (sum(spread.map((from) => from ** 2)) + noise / prior.swing ** 2);
  const least = Math.min(0, ...off);
  const most = Math.max(0, ...off);
  return usual.map((value) => value + clamp(shift + stretch * (value - middle), least, most));
}
