import { clamp, mean } from '../math/index.ts';
import type { FittedClimate } from './monthly-climate.ts';

/*
 * Fitted by tools/weather/fit-min-temp-sd.ts on daily records of nine places, 27° to 57° of latitude.
 * Frost nights of climate stations cannot give this spread: fitted to them it comes out near 5.5 °C everywhere,
 * whatever the range, season or latitude, where records have 1.5–5 °C (the frost field counts ground frost or was
 * itself made from mean temperature). docs/weather-years.md has both fits and their errors.
 */
const constant = 0.183;
const perRange = 0.0707;
const perSwing = 0.0175;
const perColdness = 0.0297;

/** Predictors are kept within what the records cover, °C. */
const rangeLimits = [4.5, 12] as const;
const swingLimits = [8, 33] as const;
const coldnessLimits = [-17, 17] as const;

/**
 * Standard deviation of the daily minimum about its month's mean, all years together, °C, 1.5–7: larger where days
 * swing more, where the year swings more and in months colder than the year.
 */
export function minTempSd(climate: FittedClimate): Float64Array {
  const { tempMeanC, tempRangeC } = climate;
  const annualMean = mean(tempMeanC);
  const swing = Math.max(...tempMeanC) - Math.min(...tempMeanC);
  return Float64Array.from(tempMeanC, (temperature, month) => {
    const logSpread =
      constant +
      perRange * clamp(tempRangeC[month]!, ...rangeLimits) +
      perSwing * clamp(swing, ...swingLimits) +
      perColdness * clamp(annualMean - temperature, ...coldnessLimits);
    return clamp(Math.exp(logSpread), 1.5, 7);
  });
}
