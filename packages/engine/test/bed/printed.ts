import { expect } from 'vitest';

export function expectNear(actual: number, printed: number, tolerance: number): void {
  expect(Math.abs(actual - printed), `${actual} against ${printed} ± ${tolerance}`).toBeLessThanOrEqual(
    tolerance,
  );
}

/** Half a unit of the last printed digit, with a hair for binary fractions. */
export function expectPrinted(actual: number, printed: number, decimals: number): void {
  expectNear(actual, printed, 0.5 * 10 ** -decimals + 1e-9);
}
