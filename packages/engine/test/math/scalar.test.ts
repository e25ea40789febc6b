import { describe, expect, it } from 'vitest';
import { acosClamped, asinClamped, clamp, clamp01, degreesToRadians, lerp } from '../../src/math/index.ts';

describe('scalar helpers', () => {
  it('clamp keeps what lies within and cuts what lies without', () => {
    expect([-2, -1, 0.5, 3, 4].map((value) => clamp(value, -1, 3))).toEqual([-1, -1, 0.5, 3, 3]);
    expect([-0.1, 0, 0.3, 1, 1.1].map(clamp01)).toEqual([0, 0, 0.3, 1, 1]);
  });

  it('do not hide NaN', () => {
    expect(clamp(Number.NaN, 0, 1)).toBeNaN();
    expect(clamp01(Number.NaN)).toBeNaN();
  });

  it('inverse functions survive rounding beyond ±1', () => {
    expect(acosClamped(1 + 1e-12)).toBe(0);
    expect(acosClamped(-1 - 1e-12)).toBe(Math.PI);
    expect(asinClamped(1 + 1e-12)).toBe(Math.PI / 2);
    expect(acosClamped(0.5)).toBeCloseTo(60 * degreesToRadians, 12);
  });

  it('lerp runs from one value to the other and beyond', () => {
    expect([0, 0.25, 1, 2].map((share) => lerp(2, 6, share))).toEqual([2, 3, 6, 10]);
  });
});
