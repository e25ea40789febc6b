import { type DayNumber, dayNumber } from '../calendar/index.ts';
import { dayLength } from './day-length.ts';

/**
 * Hours from civil dawn to civil dusk on the day, between midwinter and midsummer, on which the sun is up for
 * `sunUpH`. Where it never is, the twilight of the longest or shortest day is added.
 * @param latitudeDeg −65…65; both hemispheres alike
 */
export function photoperiodOfSunUp(sunUpH: number, latitudeDeg: number): number {
  const on = (day: DayNumber, convention: 'sun-up' | 'civil') =>
    dayLength(Math.abs(latitudeDeg), 0, day, convention).hours;
  let low = dayNumber(2026, 12, 21);
  let high = dayNumber(2027, 6, 21);
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if (on(middle, 'sun-up') < sunUpH) low = middle;
    else high = middle;
  }
  return sunUpH + on(high, 'civil') - on(high, 'sun-up');
}
