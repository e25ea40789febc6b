import { climateYearDays, monthLengths } from '../calendar/index.ts';
import type { MonthlyClimate } from '../climate/index.ts';
import { clamp, randomSource } from '../math/index.ts';
import { dailyLaws, wetDayMm } from './daily-laws.ts';
import { standardGamma } from './gamma.ts';
import {
  clearnessMemory,
  clearnessRangeCorrelation,
  monthRainSpread,
  monthScaleDays,
  monthScaleShare,
  rangeMonthScaleShare,
  rangeSpread,
  yearScaleDays,
  yearScaleShare,
} from './spread.ts';
import type { WeatherSeries } from './weather-series.ts';

/** Deviates of range and radiation are cut here, on both sides alike, so that means stay and ranges are positive. */
const cut = 2.5;
/** The slow components move in steps of this many days (73 a year). */
const slowStepDays = 5;
const monthMemory = Math.exp(-slowStepDays / monthScaleDays);
const monthFresh = Math.sqrt(1 - monthMemory ** 2);
const yearMemory = Math.exp(-slowStepDays / yearScaleDays);
const yearFresh = Math.sqrt(1 - yearMemory ** 2);
const monthLoad = Math.sqrt(monthScaleShare);
const yearLoad = Math.sqrt(yearScaleShare);
const fastLoad = Math.sqrt(1 - monthScaleShare - yearScaleShare);
const rangeSlowLoad = Math.sqrt(rangeMonthScaleShare);
const rangeFastLoad = Math.sqrt(1 - rangeMonthScaleShare);
/** Clearness beyond what the range tells: fed with uniform noise, whose variance is 1/12. */
const clearnessFresh = Math.sqrt(12 * (1 - clearnessRangeCorrelation ** 2) * (1 - clearnessMemory ** 2));

/**
 * Consecutive generated years of daily weather whose long-run monthly means are the climate's own. Day 0 is
 * 1 January. The same seed gives the same weather, and a longer run begins with the shorter one.
 *
 * A first-order chain of wet and dry days, gamma rain, and lag-1 correlated departures of the minimum, the
 * range and the radiation (the lines of Richardson 1981, Water Resources Research 17:182–190, and Geng et al. 1986,
 * Agricultural and Forest Meteorology 36:363–376), with the range in place of the maximum, plus components
 * that last a month and a year. Constants: spread.ts.
 *
 * @param years whole number of years, 1 or more
 * @param seed whole number
 */
export function weatherYears(climate: MonthlyClimate, years: number, seed: number): WeatherSeries {
  const days = years * climateYearDays;
  const tempMinC = new Float64Array(days);
  const tempMaxC = new Float64Array(days);
  const rainMm = new Float64Array(days);
  const solarMJ = new Float64Array(days);
  const random = randomSource(seed);
  const { memory, wetAfter, minMeanC, minSdC, rangeMeanC, solarMeanMJ, solarReachMJ, ...laws } =
    dailyLaws(climate);
  const {
    solarSdMJ,
    rainBeyondMm,
    minSkewSixth,
    rainShape,
    carryMin,
    freshMin,
    freshRangeShared,
    freshRange,
  } = laws;
  const { rangeIntoMin, minIntoRange, rangeIntoRange } = memory;

  let monthScale = random.normal();
  let yearScale = random.normal();
  let min = random.normal();
  let range = random.normal();
  let rangeSlow = random.normal();
  let clearness = 0;
  let slow = 0;
  let rainFactor = 1;
  let wet = random.uniform() < wetAfter[0]! ? 1 : 0;

  let day = 0;
  for (let year = 0; year < years; year++) {
    let month = 0;
    let nextMonth = 0;
    let nextSlowStep = 0;
    for (let climateDay = 0; climateDay < climateYearDays; climateDay++, day++) {
      if (climateDay === nextSlowStep) {
        nextSlowStep += slowStepDays;
        monthScale = monthMemory * monthScale + monthFresh * random.normal();
        yearScale = yearMemory * yearScale + yearFresh * random.normal();
        rangeSlow = monthMemory * rangeSlow + monthFresh * random.normal();
        slow = monthLoad * monthScale + yearLoad * yearScale;
      }
      if (climateDay === nextMonth) {
        nextMonth += monthLengths[month++]!;
        // Lognormal with mean 1.
        rainFactor = Math.exp(monthRainSpread * (random.normal() - monthRainSpread / 2));
      }
      wet = random.uniform() < wetAfter[2 * climateDay + wet]! ? 1 : 0;
      const law = 2 * climateDay + wet;
      if (wet === 1) {
        const shape = rainShape[climateDay]!;
        rainMm[day] =
          wetDayMm + (rainBeyondMm[climateDay]! * rainFactor * standardGamma(shape, random)) / shape;
      }

      const fresh = random.normal();
      const minBefore = min;
      min = carryMin[climateDay]! * min + rangeIntoMin * range + freshMin[climateDay]! * fresh;
      range =
        minIntoRange * minBefore +
        rangeIntoRange * range +
        freshRangeShared[climateDay]! * fresh +
        freshRange[climateDay]! * random.normal();
      clearness = clearnessMemory * clearness + clearnessFresh * (random.uniform() - 0.5);

      const deviate = fastLoad * min + slow;
      // Second-order Cornish–Fisher bend: skewed, mean still 0.
      const bent = deviate + minSkewSixth[climateDay]! * (deviate * deviate - 1);
      const low = minMeanC[law]! + minSdC[climateDay]! * bent;
      tempMinC[day] = low;
      const rangeDeviate = rangeFastLoad * range + rangeSlowLoad * rangeSlow;
      tempMaxC[day] = low + rangeMeanC[law]! * (1 + rangeSpread * clamp(rangeDeviate, -cut, cut));
      const reach = solarReachMJ[law]!;
      const departure = solarSdMJ[climateDay]! * (clearnessRangeCorrelation * rangeDeviate + clearness);
      solarMJ[day] = solarMeanMJ[law]! + clamp(departure, -reach, reach);
    }
  }
  return { days, tempMinC, tempMaxC, rainMm, solarMJ };
}
