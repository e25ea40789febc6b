/**
 * Standard normal distribution function, absolute error below 7.5e-8.
 * Source: Abramowitz & Stegun 1964, Handbook of Mathematical Functions, 26.2.17 (constants from memory,
 * checked in the tests against a reference library).
 */
export function normalCdf(z: number): number {
  const t = 1 / (1 + 0.2316419 * Math.abs(z));
  const density = 0.3989422804014327 * Math.exp(-0.5 * z * z);
  const tail =
    density *
    t *
    (0.31938153 + t * (-0.356563782 + t * (1.781477937 + t * (-1.821255978 + t * 1.330274429))));
  return z >= 0 ? 1 - tail : tail;
}

/**
 * Standard normal quantile, relative error below 1.2e-9 (Acklam's rational approximation, constants from
 * memory, checked in the tests by a round trip through a reference library).
 * ±Infinity at 0 and 1.
 */
export function normalQuantile(share: number): number {
  if (share <= 0) return Number.NEGATIVE_INFINITY;
  if (share >= 1) return Number.POSITIVE_INFINITY;
  const edge = 0.02425;
  if (share < edge) return tailQuantile(Math.sqrt(-2 * Math.log(share)));
  if (share > 1 - edge) return -tailQuantile(Math.sqrt(-2 * Math.log(1 - share)));
  const q = share - 0.5;
  const r = q * q;
  return (
    ((((((-3.969683028665376e1 * r + 2.209460984245205e2) * r - 2.759285104469687e2) * r +
      1.38357751867269e2) *
      r -
      3.066479806614716e1) *
      r +
      2.506628277459239) *
      q) /
    (((((-5.447609879822406e1 * r + 1.615858368580409e2) * r - 1.556989798598866e2) * r +
      6.680131188771972e1) *
      r -
      1.328068155288572e1) *
      r +
      1)
  );
}

function tailQuantile(q: number): number {
  return (
    (((((-7.784894002430293e-3 * q - 3.223964580411365e-1) * q - 2.400758277161838) * q - 2.549732539343734) *
      q +
      4.374664141464968) *
      q +
      2.938163982698783) /
    ((((7.784695709041462e-3 * q + 3.224671290700398e-1) * q + 2.445134137142996) * q + 3.754408661907416) *
      q +
      1)
  );
}
