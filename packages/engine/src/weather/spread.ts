import { clamp } from '../math/index.ts';

/*
 * What monthly means do not say about daily weather: how far days stray, how long they remember, how wet and
 * dry days differ. Regressions on daily records of eight places (Seattle, New York, Adelaide, Melbourne, Berlin,
 * Toronto, Florianópolis, Sitka; for rain also one in the Netherlands) by tools/weather/fit-spread.ts; values "set" were
 * then chosen so that generated years meet the records' figures (docs/weather-years.md has both and the errors).
 * Limits keep each relation near what the records cover. `continentalityC` is the warmest minus the coldest
 * monthly mean, °C.
 */

/**
 * Persistence of wet days, P(wet|wet) − P(wet|dry). Set between Seattle (0.32), Melbourne (0.25) and New York
 * (0.15); the regression's slope is flatter and would miss New York.
 */
export function wetPersistence(continentalityC: number): number {
  return clamp(0.56 - 0.0165 * continentalityC, 0.15, 0.31);
}

/** Shape of the gamma distribution of rain above 0.1 mm on wet days, from the wet-day share 0…1. */
export function rainShape(wetShare: number): number {
  const variation = clamp(1.8 - 0.9 * wetShare, 0.9, 1.8);
  return 1 / (variation * variation);
}

/** Mean minimum of dry days minus that of wet days, in standard deviations of the daily minimum. */
export function dryMinShift(tempRangeC: number, continentalityC: number): number {
  return clamp(-1.2 + 0.138 * tempRangeC - 0.0132 * continentalityC, -1.1, 0.4);
}

/** Daily range of dry days minus that of wet days, as a share of the mean range. */
export function dryRangeShift(tempRangeC: number, continentalityC: number): number {
  return clamp(0.389 + 0.0142 * tempRangeC - 0.0131 * continentalityC, 0, 0.5);
}

/**
 * Correlation of the minimum with the range of the same day, wet and dry days apart.
 * @param departureC the day's mean temperature minus the year's, °C
 */
export function minRangeCorrelation(tempRangeC: number, continentalityC: number, departureC: number): number {
  return clamp(-1.014 + 0.0567 * tempRangeC + 0.016 * continentalityC + 0.0102 * departureC, -0.42, 0.15);
}

/** How strongly yesterday's minimum carries into today's, from the correlation of minimum and range; 0.62 set (fit 0.59). */
export function minIntoMin(correlation: number): number {
  return 0.62 - 0.197 * correlation;
}

/**
 * Skewness of the daily minimum about its season: warm nights stray far where the sea keeps cold ones close.
 * @param minSdC standard deviation of the daily minimum, °C
 */
export function minSkewness(continentalityC: number, minSdC: number): number {
  return clamp(-0.163 - 0.039 * continentalityC + 0.305 * minSdC, -0.5, 0.7);
}

/** How strongly yesterday's range (a warm afternoon) carries into this morning's minimum. */
export function rangeIntoMin(continentalityC: number): number {
  return clamp(0.631 - 0.0198 * continentalityC, 0.08, 0.43);
}

/** How strongly yesterday's minimum carries into today's range. */
export function minIntoRange(continentalityC: number): number {
  return clamp(-0.32 + 0.0128 * continentalityC, -0.18, 0);
}

/**
 * How strongly yesterday's range carries into today's. Set: the fit gives 0.09 within wet and dry days, but then
 * maxima forget too fast, since what fronts do to the day after rain is left out.
 */
export const rangeIntoRange = 0.33;
/** Standard deviation of the range about its wet-day or dry-day mean, as a share of that mean. */
export const rangeSpread = 0.354;
/** Shares of the variance of the minimum that last about a month and about a year; of the range, a month. Set on
 * the spread between years of monthly means, chiefly Adelaide's 39 years. */
export const monthScaleShare = 0.04;
export const yearScaleShare = 0.025;
export const rangeMonthScaleShare = 0.04;
/** Their memories, days. */
export const monthScaleDays = 25;
export const yearScaleDays = 300;
/**
 * Standard deviation of the logarithm of a month's rain amounts beyond independent days. Set between Adelaide
 * (squared variation of monthly totals 0.05 above that of independent days) and the Netherlands (0.09).
 */
export const monthRainSpread = 0.22;
/**
 * Clearness: dry minus wet days, spread within each, correlation with the range, memory of the rest. Means of
 * Berlin (550 days of sunshine hours) and Florianópolis (a year of radiation).
 */
export const dryClearnessShift = 0.145;
export const clearnessSpread = 0.147;
export const clearnessRangeCorrelation = 0.55;
export const clearnessMemory = 0.2;
