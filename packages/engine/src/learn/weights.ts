import type { RandomSource } from '../math/index.ts';

/** How many equal draws are worth as much as these unequal ones (Kish 1965): (Σw)² / Σw². */
export function effectiveNumber(weights: ArrayLike<number>): number {
  let sum = 0;
  let squares = 0;
  for (let i = 0; i < weights.length; i++) {
    sum += weights[i];
    squares += weights[i] ** 2;
  }
  return squares > 0 ? sum ** 2 / squares : 0;
}

/** Weights from their logarithms, the greatest 1. */
export function weightsOf(logs: ArrayLike<number>): Float64Array {
  let most = Number.NEGATIVE_INFINITY;
  for (let i = 0; i < logs.length; i++) most = Math.max(most, logs[i]);
  return Float64Array.from(logs, (log) => Math.exp(log - most));
}

const halvings = 20;

/** The weights to the greatest power up to 1 that leaves so many effective ones, as far as halving finds it. */
export function tempered(weights: Float64Array, least: number): Float64Array {
  if (effectiveNumber(weights) >= least) return weights;
  let low = 0;
  let high = 1;
  for (let i = 0; i < halvings; i++) {
    const power = (low + high) / 2;
    if (effectiveNumber(weights.map((weight) => weight ** power)) >= least) low = power;
    else high = power;
  }
  return weights.map((weight) => weight ** low);
}

/** Places of `count` equally weighed draws, by systematic resampling (Kitagawa 1996): each comes as often as its weight says, to within one. */
export function resampled(weights: Float64Array, count: number, random: RandomSource): number[] {
  const total = weights.reduce((sum, weight) => sum + weight, 0);
  const step = total / count;
  let reach = step * random.uniform();
  let passed = weights[0];
  let at = 0;
  return Array.from({ length: count }, () => {
    while (passed < reach && at < weights.length - 1) passed += weights[++at];
    reach += step;
    return at;
  });
}
