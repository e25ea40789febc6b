import { type ClimateDay, climateYearDays, type SeasonDay } from '../calendar/index.ts';

// Solstices as climate days (0 = 1 January): 21 June and 21 December.
const juneSolstice: ClimateDay = 171;
const decemberSolstice: ClimateDay = 354;

/** The last weeks before the shortest day add nothing to a crop that wintered once. */
const secondAutumnCut = 30;

/**
 * Days from the start after which a crop has had its chance. A crop started while days lengthen is meant for
 * this year and ends at the next shortest day; one started while they shorten winters once and ends a month
 * before the shortest day of the year after.
 */
export function seasonEnd(startClimateDay: ClimateDay, latitudeDeg: number): SeasonDay {
  const longest = latitudeDeg < 0 ? decemberSolstice : juneSolstice;
  const shortest = latitudeDeg < 0 ? juneSolstice : decemberSolstice;
  const until = (day: ClimateDay) =>
    (day - startClimateDay + 2 * climateYearDays) % climateYearDays || climateYearDays;
  const toLongest = until(longest);
  const toShortest = until(shortest);
  return toLongest < toShortest ? toShortest : toShortest + climateYearDays - secondAutumnCut;
}

/** No season lasts longer, days from its start. */
export const longestSeason = climateYearDays + 184;
