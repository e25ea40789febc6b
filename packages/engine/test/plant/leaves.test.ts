import fc from 'fast-check';
import { expect, test } from 'vitest';
import { areaUpTo, leafAreaTotals } from '../../src/plant/index.ts';

test('leaf i reaches its most times 1 − e^(−(i / scale)²)', () => {
  const totals = leafAreaTotals(100, 4);
  const area = (leaf: number) => 100 * (1 - Math.exp(-((leaf / 4) ** 2)));
  expect(totals[0]).toBe(0);
  expect(totals[1]).toBeCloseTo(area(1), 12);
  expect(totals[3]).toBeCloseTo(area(1) + area(2) + area(3), 12);
});

test('a leaf on its way has its part', () => {
  const totals = Float64Array.from([0, 10, 30, 60, 100]);
  expect(areaUpTo(totals, 0)).toBe(0);
  expect(areaUpTo(totals, 2)).toBe(30);
  expect(areaUpTo(totals, 2.5)).toBe(45);
});

test('more leaves are never less area', () => {
  const totals = leafAreaTotals(160, 4);
  const leaves = fc.double({ min: 0, max: 39, noNaN: true });
  fc.assert(
    fc.property(leaves, leaves, (a, b) => {
      expect(areaUpTo(totals, Math.max(a, b))).toBeGreaterThanOrEqual(areaUpTo(totals, Math.min(a, b)));
    }),
    { seed: 20261128 },
  );
});
