/** Principal components of rows of `width` numbers. */
export type PrincipalComponents = {
  mean: number[];
  /** Unit vectors, largest variance first. */
  components: number[][];
  variances: number[];
};

export function principalComponents(rows: Float64Array, width: number): PrincipalComponents {
  const count = rows.length / width;
  const mean = new Array<number>(width).fill(0);
  for (let i = 0; i < rows.length; i++) mean[i % width] = mean[i % width] + rows[i] / count;
  const covariance = Array.from({ length: width }, () => new Array<number>(width).fill(0));
  for (let r = 0; r < count; r++) {
    for (let a = 0; a < width; a++) {
      for (let b = 0; b < width; b++) {
        covariance[a][b] =
          covariance[a][b] + ((rows[r * width + a] - mean[a]) * (rows[r * width + b] - mean[b])) / count;
      }
    }
  }
  const vectors = jacobi(covariance);
  const order = mean.map((_, c) => c).sort((a, b) => covariance[b][b] - covariance[a][a]);
  return {
    mean,
    components: order.map((c) => vectors.map((row) => row[c])),
    variances: order.map((c) => Math.max(0, covariance[c][c])),
  };
}

/** Turns a symmetric matrix diagonal in place by Jacobi's rotations; returns the eigenvectors as columns. */
function jacobi(m: number[][]): number[][] {
  const n = m.length;
  const vectors = m.map((_, a) => m.map((__, b) => (a === b ? 1 : 0)));
  for (let sweep = 0; sweep < 30; sweep++) {
    for (let p = 0; p < n; p++) {
      for (let q = p + 1; q < n; q++) {
        if (m[p][q] === 0) continue;
        const theta = 0.5 * Math.atan2(2 * m[p][q], m[q][q] - m[p][p]);
        const c = Math.cos(theta);
        const s = Math.sin(theta);
        for (const row of [...m, ...vectors]) {
          const [a, b] = [row[p], row[q]];
          row[p] = c * a - s * b;
          row[q] = s * a + c * b;
        }
        for (let k = 0; k < n; k++) {
          const [a, b] = [m[p][k], m[q][k]];
          m[p][k] = c * a - s * b;
          m[q][k] = s * a + c * b;
        }
      }
    }
  }
  return vectors;
}
