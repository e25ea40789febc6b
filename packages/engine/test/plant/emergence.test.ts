import { expect, test } from 'vitest';
import { fieldFactor, normalSeedlingShare } from '../../src/plant/index.ts';

test.each([
  [-3, 0.9],
  [0, 0.9],
  [5, 0.98],
  [15, 0.98],
  [20, 0.99],
  [25, 0.97],
  [30, 0.91],
  [35, 0.73],
  [40, 0.02],
  [45, 0.02],
])('at %d °C a share of %d comes up normal (Harrington & Minges 1954)', (soilC, share) => {
  expect(normalSeedlingShare(soilC)).toBeCloseTo(share, 12);
});

test('between two temperatures of the table lies a straight line', () => {
  expect(normalSeedlingShare(32.5)).toBeCloseTo((0.91 + 0.73) / 2, 12);
  expect(normalSeedlingShare(36)).toBeCloseTo(0.73 - 0.71 / 5, 12);
});

test('a quarter is lost in the bed, a tenth in trays (memory: field factors 0.5–0.8)', () => {
  expect(fieldFactor).toEqual({ bed: 0.75, tray: 0.9 });
});
