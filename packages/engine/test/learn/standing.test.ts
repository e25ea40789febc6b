import { describe, expect, test } from 'vitest';
import { daysBehind } from '../../src/learn/standing.ts';

/** A leaf every ten days from none, to nine, then fewer again. */
const curve = Array.from({ length: 160 }, (_, day) => Math.min(9, day / 10) - Math.max(0, (day - 120) / 20));

describe('days behind', () => {
  test('are those since the middling crop had the count', () => {
    expect(daysBehind(curve, 60, 5)).toBe(10);
    expect(daysBehind(curve, 60, 6)).toBe(0);
  });

  test('are negative where the middling crop has yet to get there', () => {
    expect(daysBehind(curve, 60, 7.5)).toBe(-15);
  });

  test('are not told of counts that it never has, nor once its old leaves die', () => {
    expect(daysBehind(curve, 60, 11)).toBeNull();
    expect(daysBehind(curve, 150, 5)).toBeNull();
  });
});
