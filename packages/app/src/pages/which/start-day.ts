import { civilDate } from '@neckfall/engine';
import { voice } from '../../state/settings.ts';
import { today } from '../../state/today.ts';

/** The day of a start as it is said: with its year where that is not this one. */
export function startDayWords(startDay: number): string {
  const { day, dayWithYear } = voice.value;
  const isThisYear = civilDate(startDay).year === civilDate(today.value).year;
  return isThisYear ? day(startDay) : dayWithYear(startDay);
}
