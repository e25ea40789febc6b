import { expect, test } from 'vitest';
import { bulbDiameterMm, bulbMassG, marketableMinMm } from '../../src/plant/index.ts';

test('a globe of 50 mm weighs 62.5 g, half a gram for each cubic centimetre of its cube', () => {
  expect(bulbMassG(50)).toBeCloseTo(62.5, 12);
  expect(bulbDiameterMm(62.5)).toBeCloseTo(50, 9);
});

test('bulbs are worth keeping from an inch and a half on (7 CFR 51.2832)', () => {
  expect(marketableMinMm).toBe(Math.round(1.5 * 25.4));
});
