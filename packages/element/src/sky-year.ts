import { cropYear, plainYearStart } from '@neckfall/answers';
import {
  classNeedSunUpH,
  type DayLengthClass,
  dayLengthClasses,
  fillDayLengths,
  startMethods,
} from '@neckfall/engine';
import type { Asked } from './read-attributes.ts';

const yearDays = 365;

export type SkyYear = {
  firstDay: number;
  sunUpH: number[];
  /** What each class of onions asks of the days here, h of sun-up. */
  needs: { class: DayLengthClass; hours: number }[];
};

type Point = { latitudeDeg: number; longitudeDeg: number };

/** What the latitude alone tells of a place: its days, and what kinds of onions ask of them. */
export function skyYear(point: Point, { startDay, start, today }: Asked): SkyYear {
  const { firstDay, days } =
    startDay === null
      ? { firstDay: plainYearStart(today, point.latitudeDeg), days: yearDays }
      : cropYear(startDay, startDay);
  const hours = new Float64Array(days);
  fillDayLengths(point.latitudeDeg, point.longitudeDeg, firstDay, 'sun-up', hours);
  const needs = dayLengthClasses.map((dayLengthClass) => ({
    class: dayLengthClass,
    hours: classNeedSunUpH(point, dayLengthClass, start ?? startMethods[0], startDay ?? firstDay),
  }));
  return { firstDay, sunUpH: [...hours], needs };
}
