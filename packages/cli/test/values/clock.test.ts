import { formatDay } from '@neckfall/engine';
import { expect, test } from 'vitest';
import { today } from '../../src/values/clock.ts';

test('today is the date on the wall, whatever the hour', () => {
  expect(formatDay(today(new Date(2027, 4, 3, 0, 0)))).toBe('2027-05-03');
  expect(formatDay(today(new Date(2027, 4, 3, 23, 59)))).toBe('2027-05-03');
  expect(formatDay(today(new Date(2028, 1, 29, 12)))).toBe('2028-02-29');
});
