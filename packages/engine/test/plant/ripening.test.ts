import { expect, test } from 'vitest';
import {
  bulbShare,
  greenShare,
  ripeningDensityFactor,
  ripeningPhotoperiodFactor,
} from '../../src/plant/index.ts';

test('days beyond two hours above the need ripen sooner, up to six more', () => {
  const factor = (hoursAbove: number) => ripeningPhotoperiodFactor(14 + hoursAbove, 14, 0.5);
  expect([factor(-1), factor(2), factor(3), factor(8), factor(10)]).toEqual([1, 1, 1.5, 4, 4]);
});

test('a stand of 40 plants per m² ripens as its type does, a denser one sooner', () => {
  expect(ripeningDensityFactor(40, 0.1)).toBe(1);
  expect(ripeningDensityFactor(40 * Math.E, 0.1)).toBeCloseTo(1.1, 12);
  expect(ripeningDensityFactor(20, 0.1)).toBeLessThan(1);
});

test('bulbs take 40 % at onset and all from ripening 0.3 on (shape: Wageningen seed-onion set)', () => {
  expect(bulbShare(0)).toBe(0.4);
  expect(bulbShare(0.1)).toBeCloseTo(0.6, 12);
  expect(bulbShare(0.3)).toBe(1);
  expect(bulbShare(1)).toBe(1);
});

test('leaves fade from ripening 0.3 on, to 15 % (memory)', () => {
  expect(greenShare(0.2)).toBe(1);
  expect(greenShare(0.65)).toBeCloseTo(0.575, 12);
  expect(greenShare(1)).toBeCloseTo(0.15, 12);
});
