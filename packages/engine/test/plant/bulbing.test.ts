import { describe, expect, test } from 'vitest';
import { canopyHaste, photoperiodFactor, shadePenaltyH } from '../../src/plant/index.ts';

test('day length induces nothing at the need and all a ramp above it', () => {
  expect(photoperiodFactor(14, 14, 0.5)).toBe(0);
  expect(photoperiodFactor(14.25, 14, 0.5)).toBeCloseTo(0.5, 12);
  expect(photoperiodFactor(14.5, 14, 0.5)).toBe(1);
  expect(photoperiodFactor(20, 14, 0.5)).toBe(1);
});

describe('shade', () => {
  // Wickramasinghe et al. 2000: at 12 h, 25 % shade let bulbs form and 50 % did not; the line is ours.
  test('to a quarter asks for no longer day, half for 0.6 h more', () => {
    expect(shadePenaltyH(0)).toBe(0);
    expect(shadePenaltyH(0.25)).toBe(0);
    expect(shadePenaltyH(0.5)).toBeCloseTo(0.6, 12);
  });
});

test('a crowded canopy hastens bulbs by 6 % for each unit of leaf area, up to three (size ours)', () => {
  expect(canopyHaste(0)).toBe(1);
  expect(canopyHaste(2)).toBeCloseTo(1.12, 12);
  expect(canopyHaste(5)).toBeCloseTo(1.18, 12);
});
