import type { DayNumber } from '../calendar/index.ts';
import { calendarYear, driverIndex, type Site } from '../season/index.ts';

/**
 * What days of temperature and rain can tell of downy mildew (*Peronospora destructor*). Spores form before dawn after a
 * day below 23–24 °C, in air near full of water, and infect where leaves stay wet (Hildebrand & Sutton 1982); it falls
 * above 24 °C (University of California IPM) and wants 4–25 °C (Cornell). Daily records tell no humidity and no wet
 * leaves: rain of the day or the day before stands in for both (ours).
 */
export const mildewWeather = {
  highBelowC: 24,
  meanFromC: 6,
  rainFromMm: 1,
  /** A spell: so many such days of so many (ours). */
  spellDays: 3,
  of: 7,
  /** Spots show so long after (Hildebrand & Sutton 1982), days. */
  latentFrom: 10,
  latentTo: 16,
} as const;

/** Share of the seasons in which a spell that suits the mildew ends on a day, from the first day on to the last. */
export function mildewShares(
  site: Site,
  startDay: DayNumber,
  first: DayNumber,
  last: DayNumber,
): Float64Array {
  const { highBelowC, meanFromC, rainFromMm, spellDays, of } = mildewWeather;
  const { tempMeanC, tempMinC, rainMm } = site.generated('none', calendarYear(startDay));
  const shares = new Float64Array(Math.max(0, last - first + 1));
  const suits = (at: number) =>
    tempMeanC[at] >= meanFromC &&
    2 * tempMeanC[at] - tempMinC[at] < highBelowC &&
    (rainMm[at] >= rainFromMm || rainMm[at - 1] >= rainFromMm);
  for (let season = 0; season < site.years; season++) {
    const at = driverIndex(site, startDay, season) + first - startDay;
    let suited = 0;
    for (let day = 1 - of; day < shares.length; day++) {
      if (suits(at + day)) suited++;
      if (day >= 1 && suits(at + day - of)) suited--;
      if (day >= 0 && suited >= spellDays) shares[day] += 1 / site.years;
    }
  }
  return shares;
}
