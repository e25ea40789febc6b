/** One line of the table; `limit` in the same unit, null where none was promised. */
export type Row = { what: string; value: number; unit: string; limit: number | null };

/** A fixed piece of arithmetic of the kind a season is made of, ms: what a machine's figures are divided by. */
export function calibrationMs(): number {
  return medianMs(20, () => {
    let sum = 0;
    let state = 1;
    for (let i = 0; i < 1_000_000; i++) {
      state = Math.imul(state ^ (state >>> 15), 0x2c1b3c6d) + i;
      sum += Math.exp(-((state >>> 8) / 0x1000000)) * ((i & 7) + 0.5);
    }
    return sum;
  });
}

/** The last result, held so that no work can be left out. @public */
export let lastResult: unknown;

/** Median of `runs` timed runs after a fifth as many untimed ones. */
export function medianMs(runs: number, work: () => unknown): number {
  const times: number[] = [];
  const warmUps = Math.ceil(runs / 5);
  for (let run = -warmUps; run < runs; run++) {
    const from = performance.now();
    lastResult = work();
    const took = performance.now() - from;
    if (run >= 0) times.push(took);
  }
  return median(times);
}

export function median(values: readonly number[]): number {
  return [...values].sort((a, b) => a - b)[values.length >> 1];
}
