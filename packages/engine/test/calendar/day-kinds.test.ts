import { expect, test } from 'vitest';
import type { SeasonDay } from '../../src/calendar/index.ts';
import {
  climateDayOf,
  dayNumber,
  dayOfYear,
  formatDay,
  monthOfClimateDay,
} from '../../src/calendar/index.ts';
import { extraterrestrialRadiation } from '../../src/sky/index.ts';

const leapNewYearsEve = dayNumber(2028, 12, 31);

test('the compiler tells the kinds of days apart, and so do their numbers', () => {
  const climateDay = climateDayOf(leapNewYearsEve);
  const ofYear = dayOfYear(leapNewYearsEve);
  const sown: SeasonDay = 0;
  expect([climateDay, ofYear]).toEqual([364, 366]);
  expect(monthOfClimateDay(climateDay)).toBe(11);
  // @ts-expect-error a climate day is no day number
  expect(formatDay(climateDay)).toBe('1970-12-31');
  // @ts-expect-error a day of the year is none either
  expect(formatDay(ofYear)).toBe('1971-01-02');
  // @ts-expect-error nor is a day of a season
  expect(formatDay(sown)).toBe('1970-01-01');
  // @ts-expect-error a day of the year counts from 1, a climate day from 0
  expect(monthOfClimateDay(ofYear)).toBe(11);
  // @ts-expect-error radiation goes by the day of the year
  expect(extraterrestrialRadiation(50, climateDay)).not.toBe(extraterrestrialRadiation(50, ofYear));
});

test('sums of days are numbers, which go anywhere', () => {
  expect(formatDay(leapNewYearsEve + 1)).toBe('2029-01-01');
  expect(monthOfClimateDay(climateDayOf(leapNewYearsEve) - 31)).toBe(10);
});
