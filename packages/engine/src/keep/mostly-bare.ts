import { climateYearDays } from '../calendar/index.ts';

/** Days of a gap, counted from its first. */
export type DaysOfGap = { from: number; to: number };

/**
 * The longest stretch of a gap on each day of which the kitchen goes short in at least half of the years; null where it has
 * no such day: then a poor year alone is short.
 *
 * @param unfed share of the need that went unfed, by year and climate day
 * @param begin climate day on which the gap begins
 * @param days how long it is
 */
export function mostlyBare(
  unfed: Float64Array,
  years: number,
  begin: number,
  days: number,
): DaysOfGap | null {
  let longest: DaysOfGap | null = null;
  let from = 0;
  for (let day = 0; day < days; day++) {
    if (!isMostlyShort(unfed, years, (begin + day) % climateYearDays)) from = day + 1;
    else if (longest === null || day - from > longest.to - longest.from) longest = { from, to: day };
  }
  return longest;
}

function isMostlyShort(unfed: Float64Array, years: number, climateDay: number): boolean {
  let short = 0;
  for (let year = 0; year < years; year++) if (unfed[year * climateYearDays + climateDay] > 0) short++;
  return 2 * short >= years;
}
