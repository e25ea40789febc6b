import {
  climateDayOf,
  climateYearDays,
  type DayNumber,
  dailyCurve,
  fillDayLengths,
  firstDayOfMonth,
  type MonthlyClimate,
  monthLengths,
} from '@neckfall/engine';

/** A place's year, day by day from `firstDay` (a day number) on. */
export type PlaceYear = {
  firstDay: DayNumber;
  /** Hours of sun-up, 0…24. */
  sunUpH: number[];
  /** Mean rain of a day, mm. */
  rainMm: number[];
  /** Share of nights with ground frost, 0…1. */
  frostShare: number[];
  /** Mean daily maximum, °C. */
  highC: number[];
  /** Monthly figures, January first, for the table. */
  months: { sunUpH: number; rainMm: number; frostNights: number; highC: number }[];
};

/** Plain numbers from a climate, as they travel between threads. `days` 1…1000. */
export function placeYear(climate: MonthlyClimate, firstDay: DayNumber, days: number): PlaceYear {
  const perDay = (monthly: Float64Array) => monthly.map((value, month) => value / monthLengths[month]);
  const curve = (monthly: Float64Array, nonNegative: boolean) => {
    const year = dailyCurve(monthly, new Float64Array(climateYearDays), { nonNegative });
    return Array.from({ length: days }, (_, i) => year[climateDayOf(firstDay + i)]);
  };
  const high = climate.tempMeanC.map((mean, month) => mean + climate.tempRangeC[month] / 2);
  const sunUp = new Float64Array(days);
  fillDayLengths(climate.latitudeDeg, climate.longitudeDeg, firstDay, 'sun-up', sunUp);
  // 2027 has 365 days; monthly means of any year differ by seconds
  const common = new Float64Array(climateYearDays);
  fillDayLengths(climate.latitudeDeg, climate.longitudeDeg, commonYearStart, 'sun-up', common);
  return {
    firstDay,
    sunUpH: [...sunUp],
    rainMm: curve(perDay(climate.rainMm), true),
    frostShare: curve(perDay(climate.frostNights), true).map((share) => Math.min(1, share)),
    highC: curve(high, false),
    months: monthLengths.map((length, month) => {
      const from = firstDayOfMonth[month];
      const sum = common.subarray(from, from + length).reduce((a, b) => a + b, 0);
      return {
        sunUpH: sum / length,
        rainMm: climate.rainMm[month],
        frostNights: climate.frostNights[month],
        highC: high[month],
      };
    }),
  };
}

/** 1 January 2027. */
const commonYearStart: DayNumber = 20_819;
