import { shiftFrostNights } from './frost-shift.ts';
import type { MonthlyClimate } from './monthly-climate.ts';

/** How much colder nights are where cold air gathers, °C (memory: 1 to 4 °C on the clear nights that bring frost). */
export const frostHollowC = 2;

/** The same place in a hollow where cold air gathers: nights colder by {@link frostHollowC}, days as they were. */
export function inFrostHollow<Climate extends MonthlyClimate>(climate: Climate): Climate {
  const { tempMeanC, tempRangeC, minTempSdC, frostNights } = climate;
  return {
    ...climate,
    tempMeanC: tempMeanC.map((mean) => mean - frostHollowC / 2),
    tempRangeC: tempRangeC.map((range) => range + frostHollowC),
    frostNights: frostNights.map((nights, month) =>
      shiftFrostNights(
        nights,
        month,
        tempMeanC[month] - tempRangeC[month] / 2,
        minTempSdC[month],
        -frostHollowC,
      ),
    ),
  };
}
