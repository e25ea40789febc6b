/** Arithmetic mean; NaN for an empty sample. */
export function mean(values: ArrayLike<number>): number {
  let sum = 0;
  for (let i = 0; i < values.length; i++) sum += values[i];
  return sum / values.length;
}

/** Sample standard deviation (n − 1); NaN below two values. */
export function standardDeviation(values: ArrayLike<number>): number {
  const centre = mean(values);
  let squares = 0;
  for (let i = 0; i < values.length; i++) squares += (values[i] - centre) ** 2;
  return values.length < 2 ? Number.NaN : Math.sqrt(squares / (values.length - 1));
}

/**
 * Quantile of an ascending sample by linear interpolation between order statistics
 * (type 7 of Hyndman & Fan 1996, The American Statistician 50:361–365).
 * NaN for an empty sample; `share` in 0…1.
 */
export function quantileSorted(ascending: ArrayLike<number>, share: number): number {
  const n = ascending.length;
  if (n === 0) return Number.NaN;
  const position = share * (n - 1);
  const below = Math.floor(position);
  const above = Math.min(below + 1, n - 1);
  return ascending[below] + (ascending[above] - ascending[below]) * (position - below);
}
