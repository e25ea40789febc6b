import { timesSetBack } from '../counter-amounts.ts';
import type { WeatherQuantity } from '../found.ts';
import type { HeaderName } from './header-name.ts';
import type { Meaning } from './meaning.ts';

/** A column of values that was read, in the unit of the file. */
export type ReadColumn = {
  name: HeaderName;
  meaning: Meaning;
  values: Float64Array;
  /** Whether some are written with decimals, if only `.0`. */
  hasDecimals: boolean;
  isAsked: boolean;
};

/** Whether rows are days, or readings within them. */
export type Spacing = 'days' | 'readings';

const known = (values: Float64Array) => {
  let count = 0;
  for (const value of values) if (!Number.isNaN(value)) count++;
  return count;
};

/**
 * The one column taken for each quantity. What was asked for goes before what was guessed, outdoors before plain, what
 * has values before what has few.
 */
export function chooseColumns(
  columns: readonly ReadColumn[],
  spacing: Spacing,
): Map<WeatherQuantity, ReadColumn> {
  const chosen = new Map<WeatherQuantity, ReadColumn>();
  const best = (as: readonly WeatherQuantity[]) => {
    let most: ReadColumn | null = null;
    let score = 0;
    const counts = columns.map((column) => (as.includes(column.meaning.as) ? known(column.values) : 0));
    const fullest = counts.reduce((a, b) => Math.max(a, b), 0);
    for (const [at, column] of columns.entries()) {
      if (counts[at] === 0 || column.meaning.rank <= 0) continue;
      const filled = counts[at]! / fullest;
      const rank = column.isAsked ? 1000 : column.meaning.rank * (filled < 0.5 ? 0.1 : 1) + 0.5 * filled;
      if (rank > score) [most, score] = [column, rank];
    }
    if (most !== null) chosen.set(most.meaning.as, most);
  };
  if (spacing === 'readings') {
    best(['tempC']);
    if (!chosen.has('tempC')) {
      best(['tempMinC']);
      best(['tempMaxC']);
    }
  } else {
    best(['tempMinC']);
    best(['tempMaxC']);
    if (!chosen.has('tempMinC') && !chosen.has('tempMaxC')) best(['tempC']);
  }
  best(['rainMm', 'rainDayMm', 'rainSumMm']);
  best(['solarMJ', 'solarW']);
  return chosen;
}

/** Of readings after rain, so many show as much or more where they are a counter's. */
const counterShare = 0.85;
const fewestWet = 8;
/** Days of amounts that rise and rise must be so many to be those of a counter that no name tells. */
const fewestOfCounter = 30;

/** So much in every reading alike is what a counter shows in dry weather, mm or inches; less may be rain. */
const standingStill = 5;

/** Whether values are those of a counter, in the order of time; null where they are too few to tell. */
function isCounter(values: Float64Array): boolean | null {
  let wet = 0;
  let held = 0;
  let risen = 0;
  let before = Number.NaN;
  for (const value of values) {
    if (Number.isNaN(value)) continue;
    if (before > 0) {
      wet++;
      if (value >= before) held++;
      if (value > before) risen++;
    }
    before = value;
  }
  if (wet < fewestWet || (risen === 0 && held === wet && before < standingStill)) return null;
  return held >= counterShare * wet;
}

/**
 * What rain columns hold, as their values show: names say *total* of counters and of amounts alike. An amount of a
 * day, in rows of days, is an amount.
 */
export function settleRain(columns: readonly ReadColumn[], spacing: Spacing, day: Float64Array): void {
  const isBackward = day.length > 1 && day[0]! > day.at(-1)!;
  const days = isBackward ? day.slice().reverse() : day;
  for (const column of columns) {
    const { meaning, values, isAsked } = column;
    if (isAsked || !meaning.as.startsWith('rain')) continue;
    const inTime = isBackward ? values.slice().reverse() : values;
    const counter = isCounter(inTime);
    if (spacing === 'days') {
      const isAmount = meaning.as === 'rainDayMm' || meaning.as === 'rainMm';
      const isLong = known(values) >= fewestOfCounter;
      if (isAmount) {
        const as = counter === true && isLong ? 'rainSumMm' : 'rainMm';
        column.meaning = { ...meaning, as, rank: Math.max(6, meaning.rank) };
      } else if (meaning.as === 'rainSumMm' && meaning.rank >= 5 && counter !== true) {
        column.meaning = { ...meaning, as: 'rainMm', rank: meaning.rank + 2 };
      } else if (meaning.as === 'rainSumMm' && counter === false) column.meaning = { ...meaning, rank: 0 };
    } else if (meaning.as === 'rainMm' && counter === true) {
      const { atMidnight, elsewhere } = timesSetBack(inTime, days);
      column.meaning = { ...meaning, as: atMidnight > elsewhere ? 'rainDayMm' : 'rainSumMm' };
    } else if (meaning.as === 'rainSumMm' && counter === false) {
      column.meaning = { ...meaning, as: 'rainMm', rank: meaning.rank >= 5 ? meaning.rank : 0 };
    } else if (meaning.as === 'rainDayMm') {
      const { atMidnight, elsewhere } = timesSetBack(inTime, days);
      if (counter === false) column.meaning = { ...meaning, rank: 1 };
      else if (atMidnight > elsewhere) column.meaning = { ...meaning, rank: Math.max(8, meaning.rank) };
    }
  }
}
