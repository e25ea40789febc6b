import type { DayNumber } from '@neckfall/engine';
import type { Speaker } from '@neckfall/words';

/** From here on a day without its year could be taken for the one just past, days ahead. */
const farDays = 270;

/** A day to come, with its year where that is not plain. */
export function comingDay(day: DayNumber, today: DayNumber, { day: short, dayWithYear }: Speaker): string {
  return day - today >= farDays ? dayWithYear(day) : short(day);
}
