import { describe, expect, it } from 'vitest';
import {
  climateDayOf,
  climateYearDays,
  dayNumber,
  firstDayOfMonth,
  monthLengths,
  monthOfClimateDay,
} from '../../src/calendar/index.ts';

const msPerDay = 86_400_000;

describe('climate year', () => {
  it('is a common year day by day, by the calendar of JavaScript', () => {
    const newYear = Date.UTC(2027, 0, 1) / msPerDay;
    for (let i = 0; i < climateYearDays; i++) {
      expect(climateDayOf(newYear + i)).toBe(i);
      expect(monthOfClimateDay(i)).toBe(new Date((newYear + i) * msPerDay).getUTCMonth());
    }
    expect(new Date((newYear + climateYearDays) * msPerDay).getUTCFullYear()).toBe(2028);
  });

  it('gives 29 February the climate of the 28th and keeps the rest of a leap year in step', () => {
    expect(climateDayOf(dayNumber(2028, 2, 29))).toBe(climateDayOf(dayNumber(2028, 2, 28)));
    for (const [month, day] of [
      [1, 1],
      [2, 28],
      [3, 1],
      [12, 31],
    ]) {
      expect(climateDayOf(dayNumber(2028, month, day))).toBe(climateDayOf(dayNumber(2027, month, day)));
    }
  });

  it('has months that fill it', () => {
    expect(monthLengths.reduce((sum, length) => sum + length, 0)).toBe(climateYearDays);
    firstDayOfMonth.forEach((first, month) => {
      expect(monthOfClimateDay(first)).toBe(month);
      expect(monthOfClimateDay(first + monthLengths[month] - 1)).toBe(month);
    });
  });
});
