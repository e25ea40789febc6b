import { civilDate, type DayNumber, dayNumber, type Symptom, symptomTimes } from '@neckfall/engine';

/** Nothing is seen of a crop in its first days. */
const leastDays = 14;
/** From the start to the harvest of a crop whose tops never go over, days (common practice, no source). */
const usualDays = 150;

/**
 * When a crop was started last whose start comes round on this day of the year, so that it can show what was seen by today.
 *
 * @param endOf when the tops of one started on a day go over; null: mostly never
 */
export function lastStart(
  day: DayNumber,
  today: DayNumber,
  symptoms: readonly Symptom[],
  endOf: (startDay: DayNumber) => DayNumber | null,
): DayNumber {
  const isGrowing = symptoms.every((symptom) => symptomTimes[symptom] === 'growing');
  let start = day;
  while (start > today - leastDays) start = aYearBefore(start);
  return isGrowing || (endOf(start) ?? start + usualDays) <= today ? start : aYearBefore(start);
}

function aYearBefore(day: DayNumber): DayNumber {
  const { year, month, day: of } = civilDate(day);
  return dayNumber(year - 1, month, month === 2 && of === 29 ? 28 : of);
}
