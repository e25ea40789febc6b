import { civilDate, type StoreClimate } from '@neckfall/engine';
import { round } from './values.ts';

/** 1 January 2027, of a year without a leap day. */
const commonYearStart = 20_819;

/** The air of a store by month: means of its days. */
export function storeMonths({ tempC, humidityPct }: StoreClimate) {
  const monthOf = Array.from(tempC, (_, day) => civilDate(commonYearStart + day).month);
  return Array.from({ length: 12 }, (_, at) => {
    const days = monthOf.flatMap((month, day) => (month === at + 1 ? [day] : []));
    const mean = (of: Float64Array) => round(days.reduce((sum, day) => sum + of[day], 0) / days.length, 1);
    return { month: at + 1, tempC: mean(tempC), relativeHumidityPct: mean(humidityPct) };
  });
}
