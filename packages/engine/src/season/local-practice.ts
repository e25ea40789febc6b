import type { ClimateDay } from '../calendar/index.ts';
import type { DayLengthClass, StartMethod } from '../plant/index.ts';

/** First and last of a stretch of climate days (0…364); `from` is later than `to` where it crosses New Year. */
export type DayStretch = { from: ClimateDay; to: ClimateDay };

/** How growers of a district start a crop, as published. */
export type LocalPractice = {
  class: DayLengthClass;
  start: StartMethod;
  span: DayStretch;
  /** Who says so. */
  source: string;
};
