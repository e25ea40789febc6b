import type { RandomSource } from '../../packages/engine/src/index.ts';

export type Minimum = { at: number[]; loss: number };

/** Price of a squared step outside the box, so that the search comes back in. */
const outsidePrice = 5;

/** Least share of its variance a coordinate keeps from one generation to the next. */
const leastKept = 0.2;

/**
 * Separable CMA-ES (Ros & Hansen 2008, formulas from memory; the evolution path of the covariance is left out):
 * a cloud of normal draws, with a spread for each coordinate, moves to the better half of each generation.
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
  const raw = Array.from({ length: kept }, (_, i) => Math.log(kept + 0.5) - Math.log(i + 1));
  const sum = raw.reduce((a, b) => a + b);
  const weights = raw.map((w) => w / sum);
  const muEff = 1 / weights.reduce((a, w) => a + w * w, 0);
  const pathRate = (muEff + 2) / (n + muEff + 5);
  const damping = 1 + pathRate;
  const spreadRate = Math.min(1, (((n + 2) / 3) * 2) / ((n + 1.3) ** 2 + muEff));
  const expectedLength = Math.sqrt(n) * (1 - 1 / (4 * n));

  let centre = [...start];
  let sigma = step;
  const spread = centre.map(() => 1);
  const path = centre.map(() => 0);
  let best: Minimum = { at: [...start], loss: loss(start) };

  for (let generation = 0; generation < generations; generation++) {
    const cloud = Array.from({ length: drawn }, () => {
      const z = centre.map(() => random.normal());
      const x = centre.map((c, i) => c + sigma * spread[i] * z[i]);
      const at = x.map((c) => Math.min(1, Math.max(0, c)));
      const found = loss(at);
      const outside = x.reduce((a, c, i) => a + (c - at[i]) ** 2, 0);
      if (found < best.loss) best = { at, loss: found };
      return { z, rank: found + outsidePrice * outside };
    })
      .sort((a, b) => a.rank - b.rank)
      .slice(0, kept);
    const mean = (of: (z: number) => number, i: number) =>
      cloud.reduce((a, { z }, k) => a + weights[k] * of(z[i]), 0);
    const drift = centre.map((_, i) => mean((z) => z, i));
    centre = centre.map((c, i) => c + sigma * spread[i] * drift[i]);
    let square = 0;
    for (let i = 0; i < n; i++) {
      path[i] = (1 - pathRate) * path[i] + Math.sqrt(pathRate * (2 - pathRate) * muEff) * drift[i];
      square += path[i] ** 2;
      const variance = mean((z) => z * z, i);
      spread[i] *= Math.sqrt(Math.max(leastKept, 1 + spreadRate * (variance - 1)));
    }
    sigma *= Math.exp((pathRate / damping) * (Math.sqrt(square) / expectedLength - 1));
  }
  return best;
}
