import type { Member } from './population.ts';
import { tempered } from './weights.ts';

/** Weather years that must go on having a say, as a share of all: what comes is no likelier to be like one of them. */
const leastShare = 0.6;

/**
 * Weights in which no few weather years rule. What was seen tells of the weather so far as well where none was
 * measured, but of what comes it tells next to nothing.
 */
export function spreadOverWeather(
  members: readonly Member[],
  weights: Float64Array,
  weatherYears: number,
): Float64Array {
  const sums = new Float64Array(weatherYears);
  members.forEach(({ weatherYear }, at) => {
    sums[weatherYear] += weights[at];
  });
  const kept = tempered(sums, leastShare * weatherYears);
  return weights.map((weight, at) => {
    const { weatherYear } = members[at];
    return sums[weatherYear] > 0 ? (weight * kept[weatherYear]) / sums[weatherYear] : 0;
  });
}
