/*
 * Five ways to count days, all plain numbers while the program runs. The kind is there for the compiler alone: sums of any
 * of them are numbers again and go anywhere, but one kind can't be passed where another is meant.
 */

/** Days since 1970-01-01, see day-number.ts. */
export type DayNumber = number & { readonly kind?: 'day number' };

/** Day of a year of 365 days, 0…364, 0 on 1 January, see climate-year.ts. */
export type ClimateDay = number & { readonly kind?: 'climate day' };

/** Day of a calendar year, 1…366, 1 on 1 January. */
export type DayOfYear = number & { readonly kind?: 'day of year' };

/** Day of a year without a leap day, 1…365: the same date in any year. */
export type CommonYearDay = number & { readonly kind?: 'day of a common year' };

/** Days from the start of a plan, 0 on its start day. */
export type SeasonDay = number & { readonly kind?: 'season day' };
