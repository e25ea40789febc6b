import fc from 'fast-check';
import { expect, it } from 'vitest';
import { symmetricEigen } from './symmetric-eigen.ts';

// Strang, Introduction to Linear Algebra, §6.1 (memory): [[2, 1], [1, 2]] has 1 and 3.
it('finds the eigenvalues of a small matrix', () => {
  const { values } = symmetricEigen([
    [2, 1],
    [1, 2],
  ]);
  expect([...values].sort((a, b) => a - b).map((value) => Number(value.toFixed(12)))).toEqual([1, 3]);
});

it('puts any symmetric matrix together again from values and unit vectors', () => {
  const size = 6;
  const entry = fc.double({ min: -5, max: 5, noNaN: true });
  fc.assert(
    fc.property(fc.array(entry, { minLength: size * size, maxLength: size * size }), (flat) => {
      const matrix = Array.from({ length: size }, (_, i) =>
        Array.from({ length: size }, (_, j) => flat[Math.min(i, j) * size + Math.max(i, j)]),
      );
      const { values, vectors } = symmetricEigen(matrix);
      for (let i = 0; i < size; i++)
        for (let j = 0; j < size; j++) {
          const again = values.reduce((a, value, k) => a + value * vectors[k][i] * vectors[k][j], 0);
          expect(again).toBeCloseTo(matrix[i][j], 9);
        }
    }),
    { seed: 20261128, numRuns: 50 },
  );
});
