import { climateYearDays, firstDayOfMonth, monthLengths } from '../calendar/index.ts';

/** What the days between monthly means may be. */
export type DailyCurveOptions = {
  /** For rain and wet days: no day below zero; the monthly means stay. */
  nonNegative?: boolean;
};

/**
 * Smooth daily values of a climate year whose mean over each month is the monthly value: the closed curve through the
 * year with the least bending (sum of squared second differences). `monthly` 12 values, `out` 365; returns `out`.
 */
export function dailyCurve(
  monthly: Float64Array,
  out: Float64Array,
  options: DailyCurveOptions = {},
): Float64Array {
  if (monthly.length !== 12 || out.length !== climateYearDays) {
    throw new RangeError(
      `daily curve: expected 12 months and ${climateYearDays} days, got ${monthly.length} and ${out.length}`,
    );
  }
  curveMatrix ??= leastBendingMatrix();
  for (let day = 0; day < climateYearDays; day++) {
    let value = 0;
    for (let month = 0; month < 12; month++) value += curveMatrix[day * 12 + month] * monthly[month];
    out[day] = value;
  }
  if (options.nonNegative) liftToZero(monthly, out);
  return out;
}

/** Cuts what lies below zero and scales each month that was cut back to its mean. */
function liftToZero(monthly: Float64Array, out: Float64Array): void {
  for (let month = 0; month < 12; month++) {
    const first = firstDayOfMonth[month];
    const end = first + monthLengths[month];
    let sum = 0;
    let cut = false;
    for (let day = first; day < end; day++) {
      if (out[day] < 0) {
        out[day] = 0;
        cut = true;
      }
      sum += out[day];
    }
    if (!cut) continue;
    const scale = sum > 0 ? (Math.max(0, monthly[month]) * monthLengths[month]) / sum : 0;
    for (let day = first; day < end; day++) out[day] = out[day] * scale;
  }
}

let curveMatrix: Float64Array | null = null;

/**
 * The curve is linear in the monthly values, so one matrix of 365 × 12 serves all. A closed curve of least bending under
 * linear constraints is a constant plus Σ λ_m × (kernel averaged over month m), the kernel being the inverse of the
 * bending operator: Σ_k cos(2πk·lag/365) / (2 − 2cos(2πk/365))². λ and the constant follow from the twelve means and Σλ = 0.
 */
function leastBendingMatrix(): Float64Array {
  const days = climateYearDays;
  const kernel = new Float64Array(days);
  const cosine = Float64Array.from({ length: days }, (_, lag) => Math.cos((2 * Math.PI * lag) / days));
  // shorter waves than a week weigh less than a millionth of the longest
  for (let k = 1; k <= days / 7; k++) {
    const weight = 1 / (2 - 2 * cosine[k]) ** 2;
    for (let lag = 0; lag < days; lag++) kernel[lag] += weight * cosine[(k * lag) % days];
  }
  const scale = kernel[0];
  const basis: Float64Array[] = monthLengths.map((length, month) => {
    const curve = new Float64Array(days);
    const lag = (day: number) => (day - firstDayOfMonth[month] + days) % days;
    let sum = 0;
    for (let d = 0; d < length; d++) sum += kernel[lag(days - d)];
    for (let day = 0; day < days; day++) {
      curve[day] = sum / length / scale;
      sum += kernel[lag(day + 1)] - kernel[lag(day + 1 - length + days)];
    }
    return curve;
  });
  const system = Array.from({ length: 13 }, (_, row) =>
    Array.from({ length: 25 }, (_, column) => {
      if (column > 12) return column - 13 === row ? 1 : 0;
      if (row === 12) return column === 12 ? 0 : 1;
      return column === 12 ? 1 : monthMean(basis[column], row);
    }),
  );
  const solution = solve(system);
  const matrix = new Float64Array(days * 12);
  for (let day = 0; day < days; day++) {
    for (let month = 0; month < 12; month++) {
      let value = solution[12][month];
      for (let m = 0; m < 12; m++) value += basis[m][day] * solution[m][month];
      matrix[day * 12 + month] = value;
    }
  }
  return matrix;
}

function monthMean(curve: Float64Array, month: number): number {
  let sum = 0;
  for (let d = 0; d < monthLengths[month]; d++) sum += curve[firstDayOfMonth[month] + d];
  return sum / monthLengths[month];
}

/** Gauss–Jordan with row pivots on a system with its right-hand sides beside it. */
function solve(system: number[][]): number[][] {
  const n = system.length;
  for (let pivot = 0; pivot < n; pivot++) {
    let best = pivot;
    for (let row = pivot + 1; row < n; row++) {
      if (Math.abs(system[row][pivot]) > Math.abs(system[best][pivot])) best = row;
    }
    [system[pivot], system[best]] = [system[best], system[pivot]];
    const divisor = system[pivot][pivot];
    system[pivot] = system[pivot].map((value) => value / divisor);
    for (let row = 0; row < n; row++) {
      const factor = system[row][pivot];
      if (row === pivot || factor === 0) continue;
      system[row] = system[row].map((value, column) => value - factor * system[pivot][column]);
    }
  }
  return system.map((row) => row.slice(n));
}
