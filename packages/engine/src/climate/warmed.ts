import { shiftFrostNights } from './frost-shift.ts';
import type { MonthlyClimate } from './monthly-climate.ts';

/**
 * How much warmer land is now than in the period of the temperature normals (1979–2013), °C.
 * Land was 1.59 °C warmer in 2011–2020 than in 1850–1900 (memory: IPCC AR6 WG1, Summary for Policymakers A.1.2);
 * since about 1980 it has warmed by about 0.3 °C a decade (memory), so the middle of the normals, 1996, lies some
 * 0.6 °C below 2011–2020. Cautious for today, and the same everywhere, which warming is not.
 */
export const landWarmingSinceNormalsC = 0.6;

/** The same place with every month warmer by `offsetC` (−10…10 °C); frost nights follow. */
export function warmed<Climate extends MonthlyClimate>(climate: Climate, offsetC: number): Climate {
  if (!(Math.abs(offsetC) <= 10)) {
    throw new RangeError(`warming ${offsetC}: expected −10 to 10 °C`);
  }
  if (offsetC === 0) return climate;
  const { tempMeanC, tempRangeC, minTempSdC, frostNights } = climate;
  return {
    ...climate,
    tempMeanC: tempMeanC.map((temperature) => temperature + offsetC),
    frostNights: frostNights.map((nights, month) =>
      shiftFrostNights(nights, month, tempMeanC[month] - tempRangeC[month] / 2, minTempSdC[month], offsetC),
    ),
  };
}
