import { type DayRow, formatDay, type WaterDay } from '@neckfall/engine';
import { round } from './figures.ts';

/** A day of a season as files carry it: SI, units in the names, the date as ISO 8601 has it. */
export function dayOf(row: DayRow) {
  return {
    date: formatDay(row.day),
    sunUpH: round(row.sunUpH),
    photoperiodH: round(row.photoperiodH),
    tempMeanC: round(row.tempMeanC, 2),
    leavesMade: round(row.leavesMade, 2),
    leavesGreen: round(row.leavesGreen, 2),
    shootG: round(row.shootG),
    bulbG: round(row.bulbG),
    bulbing: round(row.bulbing),
    ripening: round(row.ripening),
  };
}

/** A day of a bed's water, the same. */
export function waterDayOf({ day, ...mm }: WaterDay) {
  const amounts = Object.entries(mm).map(([name, value]) => [name, round(value, 2)]);
  return { date: formatDay(day), ...(Object.fromEntries(amounts) as typeof mm) };
}
