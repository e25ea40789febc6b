import { climateYearDays, firstDayOfMonth } from '../calendar/index.ts';
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
  rangeSpread,
  yearScaleDays,
  yearScaleShare,
} from './spread.ts';
import type { WeatherSeries } from './weather-series.ts';

/** Deviates of range and radiation are cut here, on both sides alike, so that means stay and ranges are positive. */
const cut = 2.5;
/** The slow components move in steps of this many days (73 a year). */
const slowStepDays = 5;

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
  const laws = dailyLaws(climate);
  const { memory, freshMin, freshRangeShared, freshRange, minSdC, solarSdMJ } = laws;
  const days = years * climateYearDays;
  const tempMinC = new Float64Array(days);
  const tempMaxC = new Float64Array(days);
  const rainMm = new Float64Array(days);
  const solarMJ = new Float64Array(days);
  const random = randomSource(seed);

  const monthMemory = Math.exp(-slowStepDays / monthScaleDays);
  const monthFresh = Math.sqrt(1 - monthMemory * monthMemory);
  const yearMemory = Math.exp(-slowStepDays / yearScaleDays);
  const yearFresh = Math.sqrt(1 - yearMemory * yearMemory);
  const monthLoad = Math.sqrt(monthScaleShare);
  const yearLoad = Math.sqrt(yearScaleShare);
  const fastLoad = Math.sqrt(1 - monthScaleShare - yearScaleShare);
  const clearnessFresh = Math.sqrt(1 - clearnessMemory * clearnessMemory);
  const clearnessOwn = Math.sqrt(1 - clearnessRangeCorrelation * clearnessRangeCorrelation);

  let monthScale = random.normal();
  let yearScale = random.normal();
  let min = random.normal();
  let range = random.normal();
  let clearness = random.normal();
  let wet: 0 | 1 = random.uniform() < laws.wetAfter[0][0]! ? 1 : 0;
  let slow = 0;
  let rainFactor = 1;

  let day = 0;
  for (let year = 0; year < years; year++) {
    let month = 0;
    for (let climateDay = 0; climateDay < climateYearDays; climateDay++, day++) {
      if (climateDay % slowStepDays === 0) {
        monthScale = monthMemory * monthScale + monthFresh * random.normal();
        yearScale = yearMemory * yearScale + yearFresh * random.normal();
        slow = monthLoad * monthScale + yearLoad * yearScale;
      }
      if (climateDay === firstDayOfMonth[month]) {
        month++;
        // Lognormal with mean 1.
        rainFactor = Math.exp(monthRainSpread * (random.normal() - monthRainSpread / 2));
      }
      wet = random.uniform() < laws.wetAfter[wet][climateDay]! ? 1 : 0;
      if (wet === 1) {
        const beyond = laws.rainBeyondMm[climateDay]!;
        const shape = laws.rainShape[climateDay]!;
        rainMm[day] = wetDayMm + (beyond * rainFactor * standardGamma(shape, random)) / shape;
      }

      const fresh = random.normal();
      const minBefore = min;
      min = memory.minIntoMin * minBefore + memory.rangeIntoMin * range + freshMin[climateDay]! * fresh;
      range =
        memory.minIntoRange * minBefore +
        memory.rangeIntoRange * range +
        freshRangeShared[climateDay]! * fresh +
        freshRange[climateDay]! * random.normal();
      clearness = clearnessMemory * clearness + clearnessFresh * random.normal();

      const low = laws.minMeanC[wet][climateDay]! + minSdC[climateDay]! * (fastLoad * min + slow);
      tempMinC[day] = low;
      tempMaxC[day] = low + laws.rangeMeanC[wet][climateDay]! * (1 + rangeSpread * clamp(range, -cut, cut));
      const reach = laws.solarReachMJ[wet][climateDay]!;
      solarMJ[day] =
        laws.solarMeanMJ[wet][climateDay]! +
        clamp(
          solarSdMJ[climateDay]! * (clearnessRangeCorrelation * range + clearnessOwn * clearness),
          -reach,
          reach,
        );
    }
  }
  return { days, tempMinC, tempMaxC, rainMm, solarMJ };
}
