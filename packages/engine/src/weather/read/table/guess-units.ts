import type { UnitName } from '../units.ts';

/** What speaks for how a file is written, besides the values themselves. */
export type Hints = {
  /** Some column states °F, inches, miles or inches of mercury. */
  isAmerican: boolean;
  /** Dates have the month before the day. */
  isMonthFirst: boolean;
  /** Rain that states no unit looks like inches. */
  hasInches: boolean;
  /** Unit that other temperatures of the file state. */
  temperature: UnitName | null;
  /** Unit that other rain of the file states. */
  rain: UnitName | null;
};

/** Values as they stand in the file, and whether some are written with decimals, if only `.0`. */
export type Seen = { values: Float64Array; hasDecimals: boolean };

/** Known values in rising order, without what may be a code: some thousands from all over the file are enough. */
export function sortedSample(columns: readonly Seen[], mostAbsolute = 900): Float64Array {
  const kept: number[] = [];
  for (const { values } of columns) {
    const step = Math.max(1, Math.floor(values.length / 4000));
    for (let at = 0; at < values.length; at += step) {
      const value = values[at]!;
      const isCode = Math.abs(value) >= mostAbsolute || Math.floor(Math.abs(value)) === 99;
      if (!Number.isNaN(value) && !isCode) kept.push(value);
    }
  }
  return Float64Array.from(kept).sort();
}

const quantile = (sorted: Float64Array, share: number) =>
  sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))] ?? 0;

/** The unit of temperatures that state none, by their level and spread. */
export function guessTemperature(columns: readonly Seen[], hints: Hints): UnitName {
  if (hints.temperature !== null) return hints.temperature;
  const sorted = sortedSample(columns);
  if (sorted.length === 0) return hints.isAmerican ? '°F' : '°C';
  const [low, middle, high] = [0.02, 0.5, 0.98].map((share) => quantile(sorted, share)) as [
    number,
    number,
    number,
  ];
  const isWhole = !columns.some(({ hasDecimals }) => hasDecimals) && sorted.every(Number.isInteger);
  if (isWhole && (high > 135 || low < -75 || high - low > 130)) return '0.1 °C';
  if (low > 200 && high < 340) return 'K';
  // no place has a median day above 43 °C, or one in fifty above 54
  if (middle > 43 || high > 54) return '°F';
  if ((hints.isAmerican || hints.hasInches) && high > 38 && low > -25) return '°F';
  // a winter that stays below: dates month first and rain of inches are American, too
  if (hints.isMonthFirst && hints.hasInches && isWhole) return '°F';
  // whole degrees about 36 that swing widely: a cold season in °F rather than a hot place
  return isWhole && middle > 30 && high - low > 28 ? '°F' : '°C';
}

/** The unit of rain that states none. */
export function guessRain(columns: readonly Seen[], temperature: UnitName | null, hints: Hints): UnitName {
  if (hints.rain !== null) return hints.rain;
  const wet = sortedSample(columns).filter((value) => value > 0);
  const most = quantile(wet, 0.995);
  const isWhole = wet.length > 10 && wet.every(Number.isInteger);
  if (temperature === '0.1 °C') return '0.1 mm';
  // rain alone, all in whole numbers and more than falls in mm
  if (temperature === null && isWhole && quantile(wet, 0.9) > 90) return '0.1 mm';
  if (temperature === '°F' || hints.isAmerican || (temperature === null && hints.hasInches))
    return most < 20 ? 'in' : 'mm';
  return 'mm';
}

/** The unit of sun that states none: days of kWh, MJ, mean watts, joules a cm² and watt hours differ in size. */
export function guessSun(values: Float64Array, isDays: boolean): UnitName {
  const high = quantile(sortedSample([{ values, hasDecimals: false }], 9998), 0.98);
  if (!isDays) return high > 15 ? 'W/m²' : 'MJ/m²';
  if (high <= 10) return 'kWh/m²';
  if (high <= 45) return 'MJ/m²';
  if (high <= 450) return 'W/m²';
  return high <= 3500 ? 'J/cm²' : 'Wh/m²';
}

/** Rain of hundredths, and never much of it, is in inches; gauges of millimetres count tenths, or much more. */
export function looksLikeInches(columns: readonly Seen[]): boolean {
  const wet = sortedSample(columns).filter((value) => value > 0);
  const hundredths = wet.filter((value) => Math.abs(value * 10 - Math.round(value * 10)) > 1e-6);
  return wet.length >= fewestWet && hundredths.length > wet.length / 3 && wet.at(-1)! < mostInches;
}

const fewestWet = 5;
/** Few days of a year have more, inches (ours). */
const mostInches = 6;
