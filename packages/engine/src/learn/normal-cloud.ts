import type { RandomSource } from '../math/index.ts';

/** A normal law of a few dimensions, by its mean and the lower triangle of its covariance's root (Cholesky). */
export type NormalCloud = { mean: Float64Array; root: Float64Array[]; logScale: number };

/** Standard normal in each dimension. */
export function standardCloud(dimensions: number): NormalCloud {
  return cloudOf(
    new Float64Array(dimensions),
    Array.from({ length: dimensions }, (_, i) =>
      Float64Array.from({ length: dimensions }, (_, j) => +(i === j)),
    ),
  );
}

/** The law that weighed points tell, a little wider, and nowhere narrower than `leastSd`. */
export function fitCloud(
  points: readonly Float64Array[],
  weights: ArrayLike<number>,
  leastSd: number,
): NormalCloud {
  const dimensions = points[0].length;
  const mean = new Float64Array(dimensions);
  let total = 0;
  points.forEach((point, at) => {
    total += weights[at];
    for (let i = 0; i < dimensions; i++) mean[i] += weights[at] * point[i];
  });
  for (let i = 0; i < dimensions; i++) mean[i] /= total;
  const covariance = Array.from({ length: dimensions }, () => new Float64Array(dimensions));
  points.forEach((point, at) => {
    for (let i = 0; i < dimensions; i++)
      for (let j = 0; j <= i; j++)
        covariance[i][j] += ((widened * weights[at]) / total) * (point[i] - mean[i]) * (point[j] - mean[j]);
  });
  for (let i = 0; i < dimensions; i++) covariance[i][i] += leastSd ** 2;
  return cloudOf(mean, covariance);
}

/** A proposal wider than what it is to find loses little, a narrower one much. */
const widened = 1.3;

/** @param covariance its lower triangle; positive definite */
function cloudOf(mean: Float64Array, covariance: readonly Float64Array[]): NormalCloud {
  const dimensions = mean.length;
  const root = Array.from({ length: dimensions }, () => new Float64Array(dimensions));
  let logScale = 0;
  for (let i = 0; i < dimensions; i++) {
    for (let j = 0; j <= i; j++) {
      let rest = covariance[i][j];
      for (let k = 0; k < j; k++) rest -= root[i][k] * root[j][k];
      root[i][j] = i === j ? Math.sqrt(rest) : rest / root[j][j];
    }
    logScale -= Math.log(root[i][i]);
  }
  return { mean, root, logScale };
}

export function drawFrom({ mean, root }: NormalCloud, random: RandomSource): Float64Array {
  const fresh = Float64Array.from(mean, () => random.normal());
  return mean.map((middle, i) => {
    let value = middle;
    for (let j = 0; j <= i; j++) value += root[i][j] * fresh[j];
    return value;
  });
}

/** Density, without the powers of 2π that all of the same dimensions share. */
export function densityAt({ mean, root, logScale }: NormalCloud, point: Float64Array): number {
  let squares = 0;
  const solved = new Float64Array(mean.length);
  for (let i = 0; i < mean.length; i++) {
    let rest = point[i] - mean[i];
    for (let j = 0; j < i; j++) rest -= root[i][j] * solved[j];
    solved[i] = rest / root[i][i];
    squares += solved[i] ** 2;
  }
  return Math.exp(logScale - squares / 2);
}
