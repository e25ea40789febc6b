import { civilDate, type DayNumber, dayNumber, isLeapYear } from '../calendar/index.ts';
import { type Symptom, symptomTimes } from './symptoms.ts';

/** So long a crop has stood at least before a thing is seen of it, days (common practice, no source). */
const leastStood = { growing: 20, lifting: 80, store: 110 } as const;
const leastStoodFor: Partial<Record<Symptom, number>> = { flowered: 60, 'died-in-winter': 100 };

/** The latest start of a crop of which all of this can have been seen by a day. */
export function latestStart(symptoms: readonly Symptom[], by: DayNumber): DayNumber {
  const stood = symptoms.map((symptom) => leastStoodFor[symptom] ?? leastStood[symptomTimes[symptom]]);
  return by - Math.max(leastStood.growing, ...stood);
}

/** The last day like this one, of any year, up to `latest`. */
export function lastSuchDay(like: DayNumber, latest: DayNumber): DayNumber {
  const { year } = civilDate(latest);
  const then = sameDayIn(year, like);
  return then <= latest ? then : sameDayIn(year - 1, like);
}

/** The same day in another year; 29 February is the last of the month where there is none. */
export function sameDayIn(year: number, like: DayNumber): DayNumber {
  const { month, day } = civilDate(like);
  return dayNumber(year, month, month === 2 && day === 29 && !isLeapYear(year) ? 28 : day);
}
