import { climateDayOf, climateYearDays, type DayNumber, dayNumber } from '../calendar/index.ts';
import { calendarYear, type DateSpread, dateSpread, driverIndex, type Site } from '../season/index.ts';
import { averageDegrees, type DegreeDays, modifiedDegrees, singleSineDegrees } from './degree-days.ts';

/** A pest whose days are told by the warmth since midwinter. */
export type Pest = {
  baseC: number;
  /** Warmer does not hasten it, °C. */
  upperC: number;
  degrees: DegreeDays;
  /** Warmth from midwinter to its flights, or the end of its generations, °C d. */
  sums: readonly number[];
};

const noLimit = Number.POSITIVE_INFINITY;

/** Of one generation of onion thrips, egg to adult, above 8.1 °C, °C d. Source: Jamieson et al. 2012, New Zealand Plant Prot. 65:126–132. */
const thripsGeneration = 221;

/** Degree-days at which pests are about, each with its source. */
export const pests = {
  /** Flies of three broods. Source: University of Wisconsin Extension XHT1087 (680, 1950 and 3230 °F d above 40 °F). */
  onionFly: { baseC: 4.4, upperC: noLimit, degrees: averageDegrees, sums: [378, 1083, 1794] },
  /** Peaks of three flights. Source: University of Minnesota, after Funderburk et al. 1984 (360, 1080, 1800 °F d above 39 °F, 84 °F at most). */
  seedcornFly: { baseC: 3.9, upperC: 28.9, degrees: modifiedDegrees, sums: [200, 600, 1000] },
  /** The first young of the year. */
  thrips: { baseC: 8.1, upperC: noLimit, degrees: singleSineDegrees, sums: [thripsGeneration] },
} as const satisfies Record<string, Pest>;

/** Warmth is summed from 1 January, south of the equator from 1 July. */
export function midwinter(year: number, latitudeDeg: number): DayNumber {
  return dayNumber(year, latitudeDeg < 0 ? 7 : 1, 1);
}

/** The winter of the start and the next: no season meets a third. */
const winters = 2;

/** When a pest comes in the seasons of a crop, winter by winter, sum by sum. */
export function pestDates(
  site: Site,
  startDay: DayNumber,
  { baseC, upperC, degrees, sums }: Pest,
): DateSpread[][] {
  const year = calendarYear(startDay);
  const { tempMeanC, tempMinC, days } = site.generated('none', year);
  const fromMidwinter = climateDayOf(midwinter(year, site.climate.latitudeDeg)) - climateDayOf(startDay);
  return Array.from({ length: winters }, (_, winter) => {
    const reached = sums.map((): number[] => []);
    const from = fromMidwinter + winter * climateYearDays;
    for (let season = 0; season < site.years; season++) {
      const at = driverIndex(site, startDay, season);
      let sum = 0;
      let next = 0;
      const end = Math.min(from + climateYearDays, days - at);
      for (let day = from; day < end && next < sums.length; day++) {
        const lowC = tempMinC[at + day];
        sum += degrees(lowC, 2 * tempMeanC[at + day] - lowC, baseC, upperC);
        for (; next < sums.length && sum >= sums[next]; next++) reached[next].push(day);
      }
    }
    return reached.map((found) => dateSpread(found, startDay, site.years));
  });
}

/** Days of the mean climate round a day that tell how fast thrips come on then. */
const aroundDays = 10;

/** How long a generation of thrips takes round a day in the mean climate, days; null where it is too cold for one. */
export function singleGenerationDays(site: Site, day: DayNumber): number | null {
  const { tempMeanC, tempMinC } = site.mean('none');
  const { baseC, upperC, degrees } = pests.thrips;
  const at = climateDayOf(day) + climateYearDays;
  let sum = 0;
  for (let i = at - aroundDays; i <= at + aroundDays; i++)
    sum += degrees(tempMinC[i], 2 * tempMeanC[i] - tempMinC[i], baseC, upperC);
  const aDay = sum / (2 * aroundDays + 1);
  return aDay > 0 ? Math.round(thripsGeneration / aDay) : null;
}
