import { climateYearDays, firstDayOfMonth, monthLengths } from '../calendar/index.ts';
import { dailyCurve } from '../climate/index.ts';
import { clamp } from '../math/index.ts';

/**
 * Daily curve of a quantity that has limits: within them on every day, and still with the monthly means
 * (which must lie within the limits). Where the smooth curve leaves the limits it is cut, and the month's
 * other days are scaled to make up for it.
 */
export function boundedCurve(monthly: Float64Array, low: number, high: number): Float64Array {
  const curve = new Float64Array(climateYearDays);
  dailyCurve(monthly, curve);
  for (let month = 0; month < 12; month++) {
    const first = firstDayOfMonth[month]!;
    const last = first + monthLengths[month]!;
    const target = monthly[month]!;
    let sum = 0;
    for (let day = first; day < last; day++) {
      curve[day] = clamp(curve[day]!, low, high);
      sum += curve[day]!;
    }
    const mean = sum / (last - first);
    if (mean === target) continue;
    if (mean > target || high === Number.POSITIVE_INFINITY) {
      const scale = (target - low) / (mean - low);
      for (let day = first; day < last; day++) curve[day] = low + (curve[day]! - low) * scale;
    } else {
      const scale = (high - target) / (high - mean);
      for (let day = first; day < last; day++) curve[day] = high - (high - curve[day]!) * scale;
    }
  }
  return curve;
}
