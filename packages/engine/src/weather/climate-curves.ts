import { climateYearDays, monthLengths } from '../calendar/index.ts';
import { dailyCurve, type MonthlyClimate } from '../climate/index.ts';
import { extraterrestrialRadiation, solarRadiation } from '../sky/index.ts';
import { boundedCurve } from './bounded-curve.ts';

/** Mean climate of each of the 365 climate days; every curve keeps the monthly means. */
export type ClimateCurves = {
  /** Mean daily minimum, °C. */
  tempMinC: Float64Array;
  /** Mean daily maximum minus mean daily minimum, °C, above 0. */
  tempRangeC: Float64Array;
  /** Mean rain, mm a day, and the share of days with at least 0.1 mm. */
  rainMm: Float64Array;
  wetShare: Float64Array;
  /** Radiation above the air, MJ m⁻² d⁻¹, and the share of it that reaches the ground. */
  extraterrestrialMJ: Float64Array;
  clearness: Float64Array;
};

/** Smallest mean daily range, °C, so that maxima stay above minima whatever the monthly table says. */
const leastRangeC = 0.5;
/** Largest share of wet days: a chain needs both states. */
const mostWet = 0.98;

export function climateCurves(climate: MonthlyClimate): ClimateCurves {
  const perDay = (monthly: Float64Array) => monthly.map((value, month) => value / monthLengths[month]!);
  const tempRangeC = boundedCurve(
    climate.tempRangeC.map((range) => Math.max(range, leastRangeC)),
    leastRangeC / 2,
    Number.POSITIVE_INFINITY,
  );
  const tempMinC = new Float64Array(climateYearDays);
  dailyCurve(climate.tempMeanC, tempMinC);
  const clearness = boundedCurve(
    climate.sunshinePct.map((share) => solarRadiation(1, share / 100)),
    solarRadiation(1, 0),
    solarRadiation(1, 1),
  );
  const extraterrestrialMJ = new Float64Array(climateYearDays);
  for (let day = 0; day < climateYearDays; day++) {
    tempMinC[day] = tempMinC[day]! - tempRangeC[day]! / 2;
    extraterrestrialMJ[day] = extraterrestrialRadiation(climate.latitudeDeg, day + 1);
  }
  return {
    tempMinC,
    tempRangeC,
    rainMm: boundedCurve(perDay(climate.rainMm), 0, Number.POSITIVE_INFINITY),
    wetShare: boundedCurve(
      perDay(climate.wetDays).map((share) => Math.min(share, mostWet)),
      0,
      mostWet,
    ),
    extraterrestrialMJ,
    clearness,
  };
}
