import type { PlaceFacts } from './place-facts.ts';

/** One month of a place's climate, warming included. */
export type MonthFacts = {
  /** 1…12 */
  month: number;
  /** At the middle of the month, h. */
  sunUpH: number;
  tempMeanC: number;
  tempMinC: number;
  tempMaxC: number;
  rainMm: number;
  wetDays: number;
  frostNights: number;
};

/** Days of the year, counted from 0. */
const middleOfMonth = [14, 44, 73, 104, 134, 165, 195, 226, 257, 287, 318, 348];

export function monthsOf({ climate, months, sunUpH }: PlaceFacts): MonthFacts[] {
  return months.map((month) => {
    const at = month - 1;
    const half = climate.tempRangeC[at] / 2;
    return {
      month,
      sunUpH: sunUpH[middleOfMonth[at]],
      tempMeanC: climate.tempMeanC[at],
      tempMinC: climate.tempMeanC[at] - half,
      tempMaxC: climate.tempMeanC[at] + half,
      rainMm: climate.rainMm[at],
      wetDays: climate.wetDays[at],
      frostNights: climate.frostNights[at],
    };
  });
}
