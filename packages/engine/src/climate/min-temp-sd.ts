import { clamp } from '../math/index.ts';
import type { FittedClimate } from './monthly-climate.ts';

/**
 * Standard deviation of the daily minimum by month, °C.
 * Provisional, no source: larger where days swing more, in months colder than the place's mean and where the
 * year swings more. Stands until the relation fitted on the stations' frost nights takes its place.
 */
export function minTempSd(climate: FittedClimate): Float64Array {
  const { tempMeanC, tempRangeC } = climate;
  const coldest = Math.min(...tempMeanC);
  const annualSwing = Math.max(...tempMeanC) - coldest;
  return Float64Array.from(tempMeanC, (temperature, month) => {
    const winter = annualSwing > 0 ? 1 - (temperature - coldest) / annualSwing : 0;
    return clamp(1 + 0.1 * tempRangeC[month] + 0.1 * annualSwing * winter, 1.5, 7);
  });
}
