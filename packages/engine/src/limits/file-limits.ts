/*
 * How much of a file is read: more is refused before it costs time and memory. All are ours, well above what anyone
 * was seen to need.
 */

/**
 * Of a garden file, bytes: its most observations at some 200 bytes each, and half a lifetime of weather at a dozen
 * places, with room for fields of other programs.
 */
export const gardenBytes = 32_000_000;

/**
 * Entries in each list of a garden: a hundred crops a year for half a lifetime, each looked at a score of times, and a
 * page that still opens at once.
 */
export const gardenEntries = {
  places: 5_000,
  beds: 5_000,
  cultivars: 5_000,
  plantings: 5_000,
  observations: 100_000,
  jobs: 100_000,
  weather: 200,
} as const;

/** Of a record of weather, bytes: two years of a station's readings every five minutes, as UTF-16. */
export const weatherBytes = 48_000_000;

/** Lines of a record of weather: nine years of readings every five minutes, or a century of hours. */
export const weatherLines = 1_000_000;

/** Lines of a table of days of our own: those of the 500 years a record may cover, with room for blank lines. */
export const dailyLines = 200_000;

/** Columns of a daily record. */
export const weatherColumns = 256;

/** Characters of a cell: numbers, dates and names of plots need a tenth of it. */
export const longestCell = 200;

/** Characters of a row of a batch: one that has more has lost a quotation mark or is no table. */
export const longestRecord = 65_536;

/** Lines of a batch: hours of work, and twice the land of a grid of ten minutes of arc. */
export const batchLines = 1_000_000;

/** Of a batch, bytes: its most lines at some 250 bytes each. */
export const batchBytes = 256_000_000;
