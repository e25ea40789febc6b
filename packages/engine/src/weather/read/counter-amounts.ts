/** A fall to less than this share of what it showed means that a counter was set back; a smaller one is its noise. */
const setBackShare = 0.5;

const isSetBack = (value: number, before: number) => value < setBackShare * before;

/**
 * What fell between readings of a counter that is set back seldom or never, mm; NaN where the counter has no reading,
 * and at the first. What fell before it was set back since the reading before is lost.
 */
export function amountsOfSumCounter(counter: Float64Array): Float64Array {
  const amounts = new Float64Array(counter.length);
  let before = Number.NaN;
  for (let at = 0; at < counter.length; at++) {
    const value = counter[at]!;
    if (Number.isNaN(value) || Number.isNaN(before)) amounts[at] = Number.NaN;
    else amounts[at] = isSetBack(value, before) ? value : Math.max(0, value - before);
    if (!Number.isNaN(value)) before = value;
  }
  return amounts;
}

/**
 * What fell since the reading before, of a counter that is set back at midnight, mm: the amounts of a day come to its
 * highest. One that is set back at another hour, as where the rain's day begins at nine, is a counter like others.
 *
 * @param dayOf day of each reading
 */
export function amountsOfDayCounter(counter: Float64Array, dayOf: Int32Array): Float64Array {
  const { atMidnight, elsewhere } = timesSetBack(counter, dayOf);
  if (elsewhere > atMidnight) return firstAsZero(amountsOfSumCounter(counter));
  const amounts = new Float64Array(counter.length);
  let before = 0;
  let day = Number.NEGATIVE_INFINITY;
  for (let at = 0; at < counter.length; at++) {
    const value = counter[at]!;
    if (Number.isNaN(value)) {
      amounts[at] = Number.NaN;
      continue;
    }
    const isNewDay = dayOf[at] !== day;
    day = dayOf[at]!;
    if (isNewDay && !isStale(counter, dayOf, at, before)) before = 0;
    amounts[at] = isSetBack(value, before) ? value : Math.max(0, value - before);
    before = isSetBack(value, before) ? value : Math.max(value, before);
  }
  return amounts;
}

/** The first reading tells nothing of its own amount, and must not make its day lack one. */
function firstAsZero(amounts: Float64Array): Float64Array {
  const first = amounts.findIndex((amount) => !Number.isNaN(amount));
  if (first > 0) amounts[first - 1] = 0;
  return amounts;
}

/** Whether the first reading of a day still shows the day before: as much as that, and less after it. */
function isStale(counter: Float64Array, dayOf: Int32Array, at: number, before: number): boolean {
  const value = counter[at]!;
  if (before === 0 || value < before) return false;
  const next = counter[at + 1];
  return next !== undefined && dayOf[at + 1] === dayOf[at] && isSetBack(next, value);
}

/** How often a counter is set back between two days, and within them. */
export function timesSetBack(
  counter: Float64Array,
  dayOf: ArrayLike<number>,
): { atMidnight: number; elsewhere: number } {
  let atMidnight = 0;
  let elsewhere = 0;
  let before = -1;
  let beforeThat = -1;
  for (let at = 0; at < counter.length; at++) {
    const value = counter[at]!;
    if (Number.isNaN(value)) continue;
    if (before >= 0 && isSetBack(value, counter[before]!)) {
      const isFirst = dayOf[at] !== dayOf[before] || (beforeThat >= 0 && dayOf[before] !== dayOf[beforeThat]);
      if (isFirst) atMidnight++;
      else elsewhere++;
    }
    beforeThat = before;
    before = at;
  }
  return { atMidnight, elsewhere };
}
