import type { RandomSource } from '../math/index.ts';

/**
 * Gamma deviate with scale 1. Source: Marsaglia & Tsang 2000, ACM Transactions on Mathematical Software 26:363–372;
 * shapes below 1 through shape + 1 and a power of a uniform, as there.
 */
export function standardGamma(shape: number, random: RandomSource): number {
  const d = (shape < 1 ? shape + 1 : shape) - 1 / 3;
  const c = 1 / Math.sqrt(9 * d);
  for (;;) {
    const x = random.normal();
    const root = 1 + c * x;
    if (root <= 0) continue;
    const v = root * root * root;
    const u = random.uniform();
    if (u < 1 - 0.0331 * x * x * x * x || Math.log(u) < 0.5 * x * x + d * (1 - v + Math.log(v))) {
      return shape < 1 ? d * v * random.uniform() ** (1 / shape) : d * v;
    }
  }
}
