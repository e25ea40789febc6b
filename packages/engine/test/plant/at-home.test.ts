import { expect, test } from 'vitest';
import { hoursFromHome } from '../../src/plant/index.ts';

// Longest days of homes: memory.
test('a type is at home between the longest days of its home, and off by the hours to the nearer', () => {
  expect(hoursFromHome('short', 14, false)).toBe(0);
  expect(hoursFromHome('short', 15.9, false)).toBeCloseTo(0.5, 12);
  expect(hoursFromHome('northern-long', 14.3, false)).toBeCloseTo(0.7, 12);
  expect(hoursFromHome('northern-long', 20, false)).toBe(0);
});

test('kinds that winter are at home farther north', () => {
  expect(hoursFromHome('intermediate', 17, false)).toBeGreaterThan(1);
  expect(hoursFromHome('intermediate', 17, true)).toBe(0);
  expect(hoursFromHome('short', 17, true)).toBe(hoursFromHome('short', 17, false));
});
