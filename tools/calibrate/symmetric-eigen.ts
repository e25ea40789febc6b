const mostSweeps = 30;
const smallEnough = 1e-26;

/**
 * Eigenvalues and unit eigenvectors of a symmetric matrix by Jacobi's rotations (Golub & Van Loan, Matrix Computations,
 * §8.5; from memory, checked in the tests). `vectors[k]` belongs to `values[k]`; in no order.
 */
export function symmetricEigen(matrix: readonly (readonly number[])[]): {
  values: number[];
  vectors: number[][];
} {
  const n = matrix.length;
  const a = matrix.map((row) => [...row]);
  const vectors = matrix.map((_, i) => matrix.map((_, j) => (i === j ? 1 : 0)));
  for (let sweep = 0; sweep < mostSweeps; sweep++) {
    let off = 0;
    let all = 0;
    for (let i = 0; i < n; i++) {
      for (let j = 0; j < n; j++) {
        all += a[i][j] ** 2;
        if (i !== j) off += a[i][j] ** 2;
      }
    }
    if (off <= smallEnough * all) break;
    for (let p = 0; p < n; p++) for (let q = p + 1; q < n; q++) rotate(a, vectors, p, q);
  }
  return { values: a.map((row, i) => row[i]), vectors };
}

/** Turns rows and columns p and q so that their entry becomes 0. */
function rotate(a: number[][], vectors: number[][], p: number, q: number): void {
  if (a[p][q] === 0) return;
  const theta = (a[q][q] - a[p][p]) / (2 * a[p][q]);
  const t = (theta >= 0 ? 1 : -1) / (Math.abs(theta) + Math.sqrt(theta * theta + 1));
  const c = 1 / Math.sqrt(t * t + 1);
  const s = t * c;
  for (let k = 0; k < a.length; k++) {
    const kp = a[k][p];
    a[k][p] = c * kp - s * a[k][q];
    a[k][q] = s * kp + c * a[k][q];
  }
  for (let k = 0; k < a.length; k++) {
    const pk = a[p][k];
    a[p][k] = c * pk - s * a[q][k];
    a[q][k] = s * pk + c * a[q][k];
    const vp = vectors[p][k];
    vectors[p][k] = c * vp - s * vectors[q][k];
    vectors[q][k] = s * vp + c * vectors[q][k];
  }
}
