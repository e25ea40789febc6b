import { climateYearDays, type DayNumber, dayNumber } from '../calendar/index.ts';
import { fillDayLengths } from '../sky/index.ts';

/** Hours of day from 1 January of a year on, three years long. */
export type DayTable = { firstDay: DayNumber; sunUpH: Float64Array; photoperiodH: Float64Array };

/** No season started in a year ends after the second year that follows. */
export const seasonYears = 3;

type Point = { latitudeDeg: number; longitudeDeg: number };

/** What a place's latitude alone tells of it: its day lengths, each year's made when first asked for. */
export type SkyGround = {
  climate: Point;
  /** Longest sun-up day, h. */
  longestDayH: number;
  /** Hours of day from 1 January of a year on. */
  dayTable: (year: number) => DayTable;
};

/** @throws RangeError naming a latitude or longitude that is none */
export function skyGround(climate: Point): SkyGround {
  const { latitudeDeg, longitudeDeg } = climate;
  const hours = new Float64Array(climateYearDays);
  fillDayLengths(latitudeDeg, longitudeDeg, dayNumber(2027, 1, 1), 'sun-up', hours);
  const tables = new Map<number, DayTable>();
  return {
    climate,
    longestDayH: hours.reduce((a, b) => Math.max(a, b), 0),
    dayTable(year) {
      let table = tables.get(year);
      if (!table) {
        const firstDay = dayNumber(year, 1, 1);
        const length = dayNumber(year + seasonYears, 1, 1) - firstDay;
        table = { firstDay, sunUpH: new Float64Array(length), photoperiodH: new Float64Array(length) };
        fillDayLengths(latitudeDeg, longitudeDeg, firstDay, 'sun-up', table.sunUpH);
        fillDayLengths(latitudeDeg, longitudeDeg, firstDay, 'civil', table.photoperiodH);
        tables.set(year, table);
      }
      return table;
    },
  };
}
