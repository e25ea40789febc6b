/** Weighted least squares by the normal equations; `rows` holds one array of predictors an observation. */
export function leastSquares(rows: number[][], targets: number[], weights?: number[]): number[] {
  const n = rows[0]!.length;
  const system = Array.from({ length: n }, () => new Array<number>(n + 1).fill(0));
  rows.forEach((row, at) => {
    const weight = weights?.[at] ?? 1;
    for (let i = 0; i < n; i++) {
      for (let j = 0; j < n; j++) system[i]![j]! += weight * row[i]! * row[j]!;
      system[i]![n]! += weight * row[i]! * targets[at]!;
    }
  });
  for (let pivot = 0; pivot < n; pivot++) {
    let best = pivot;
    for (let row = pivot + 1; row < n; row++) {
      if (Math.abs(system[row]![pivot]!) > Math.abs(system[best]![pivot]!)) best = row;
    }
    [system[pivot], system[best]] = [system[best]!, system[pivot]!];
    for (let row = 0; row < n; row++) {
      if (row === pivot) continue;
      const factor = system[row]![pivot]! / system[pivot]![pivot]!;
      for (let column = pivot; column <= n; column++)
        system[row]![column]! -= factor * system[pivot]![column]!;
    }
  }
  return system.map((row, i) => row[n]! / row[i]!);
}

export function dot(a: number[], b: number[]): number {
  return a.reduce((sum, value, i) => sum + value * b[i]!, 0);
}
