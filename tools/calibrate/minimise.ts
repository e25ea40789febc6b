import type { RandomSource } from '../../packages/engine/src/index.ts';
import { symmetricEigen } from './symmetric-eigen.ts';

export type Minimum = { at: number[]; loss: number };

/** Price of a squared step outside the box, so that the search comes back in. */
const outsidePrice = 5;

/**
 * CMA-ES (Hansen 2016, The CMA evolution strategy: a tutorial; formulas from memory): a cloud of normal draws moves to
 * the better half of each generation and takes the shape of the valley it lies in.
 * `loss` is only asked inside the unit box; what comes back is never worse than `start`.
 */
export function minimise(
  loss: (at: readonly number[]) => number,
  start: readonly number[],
  { generations, random, step = 0.15 }: { generations: number; random: RandomSource; step?: number },
): Minimum {
  const n = start.length;
  const drawn = 4 + Math.floor(3 * Math.log(n));
  const kept = drawn >> 1;
  const raw = Array.from({ length: kept }, (_, i) => Math.log((drawn + 1) / 2) - Math.log(i + 1));
  const sum = raw.reduce((a, b) => a + b);
  const weights = raw.map((w) => w / sum);
  const muEff = 1 / weights.reduce((a, w) => a + w * w, 0);
  const sigmaRate = (muEff + 2) / (n + muEff + 5);
  const damping = 1 + sigmaRate + 2 * Math.max(0, Math.sqrt((muEff - 1) / (n + 1)) - 1);
  const pathRate = (4 + muEff / n) / (n + 4 + (2 * muEff) / n);
  const oneRate = 2 / ((n + 1.3) ** 2 + muEff);
  const manyRate = Math.min(1 - oneRate, (2 * (muEff - 2 + 1 / muEff)) / ((n + 2) ** 2 + muEff));
  const expectedLength = Math.sqrt(n) * (1 - 1 / (4 * n) + 1 / (21 * n * n));

  let centre = [...start];
  let sigma = step;
  const covariance: number[][] = start.map((_, i) => start.map((_, j) => (i === j ? 1 : 0)));
  const sigmaPath = start.map(() => 0);
  const path = start.map(() => 0);
  let best: Minimum = { at: [...start], loss: loss(start) };

  for (let generation = 0; generation < generations; generation++) {
    const { values, vectors } = symmetricEigen(covariance);
    const lengths = values.map((value) => Math.sqrt(Math.max(1e-12, value)));
    // vectors[k] is the direction of values[k]
    const along = (z: readonly number[]) =>
      start.map((_, i) => z.reduce((a, zk, k) => a + vectors[k][i] * lengths[k] * zk, 0));
    const cloud = Array.from({ length: drawn }, () => {
      const y = along(start.map(() => random.normal()));
      const x = centre.map((c, i) => c + sigma * y[i]);
      const at = x.map((c) => Math.min(1, Math.max(0, c)));
      const found = loss(at);
      const outside = x.reduce((a, c, i) => a + (c - at[i]) ** 2, 0);
      if (found < best.loss) best = { at, loss: found };
      return { y, rank: found + outsidePrice * outside };
    })
      .sort((a, b) => a.rank - b.rank)
      .slice(0, kept);
    const drift = start.map((_, i) => cloud.reduce((a, { y }, k) => a + weights[k] * y[i], 0));
    centre = centre.map((c, i) => c + sigma * drift[i]);

    // The drift in units of the cloud: whether steps go on in one direction.
    const unit = vectors.map((vector, k) => vector.reduce((a, v, i) => a + v * drift[i], 0) / lengths[k]);
    const straight = start.map((_, i) => unit.reduce((a, u, k) => a + vectors[k][i] * u, 0));
    let square = 0;
    for (let i = 0; i < n; i++) {
      sigmaPath[i] =
        (1 - sigmaRate) * sigmaPath[i] + Math.sqrt(sigmaRate * (2 - sigmaRate) * muEff) * straight[i];
      square += sigmaPath[i] ** 2;
    }
    const seen = 1 - (1 - sigmaRate) ** (2 * (generation + 1));
    const isCalm = Math.sqrt(square / seen) < (1.4 + 2 / (n + 1)) * expectedLength;
    for (let i = 0; i < n; i++)
      path[i] =
        (1 - pathRate) * path[i] + (isCalm ? Math.sqrt(pathRate * (2 - pathRate) * muEff) * drift[i] : 0);
    const stalled = isCalm ? 0 : oneRate * pathRate * (2 - pathRate);
    for (let i = 0; i < n; i++) {
      for (let j = 0; j <= i; j++) {
        const many = cloud.reduce((a, { y }, k) => a + weights[k] * y[i] * y[j], 0);
        covariance[i][j] =
          (1 - oneRate - manyRate + stalled) * covariance[i][j] +
          oneRate * path[i] * path[j] +
          manyRate * many;
        covariance[j][i] = covariance[i][j];
      }
    }
    sigma *= Math.exp((sigmaRate / damping) * (Math.sqrt(square) / expectedLength - 1));
  }
  return best;
}
