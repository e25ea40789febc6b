import { expect, test } from 'vitest';
import { averageDegrees, modifiedDegrees, singleSineDegrees } from '../../src/jobs/degree-days.ts';

const noLimit = Number.POSITIVE_INFINITY;

/** The documentation of the package TrenchR, degree_days, prints 0.47 °C d for 7–14 °C above 12 °C and below 33 °C. */
test('a single sine gives the printed example', () => {
  expect(singleSineDegrees(7, 14, 12, 33)).toBeCloseTo(0.468, 3);
});

/** Worked out apart from this code, from the formulas: mean, and single sine. */
test.each([
  [0, 10, 4.4, noLimit, 0.6, 1.903],
  [2, 12, 4, noLimit, 3, 3.388],
  [-2, 8, 4, noLimit, 0, 1.123],
  [5, 25, 10, noLimit, 5, 6.09],
  [10, 35, 11.5, 30, 11, 10.188],
])('%d to %d °C above %d °C', (low, high, base, upper, mean, sine) => {
  expect(averageDegrees(low, high, base, upper)).toBeCloseTo(mean, 3);
  expect(singleSineDegrees(low, high, base, upper)).toBeCloseTo(sine, 3);
});

test('the modified mean takes the highest no higher than the limit, and no day as less than none', () => {
  expect(modifiedDegrees(10, 35, 3.9, 28.9)).toBeCloseTo((10 + 28.9) / 2 - 3.9, 9);
  expect(modifiedDegrees(-10, 5, 3.9, 28.9)).toBe(0);
});
