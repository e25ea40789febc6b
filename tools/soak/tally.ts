import type { Round } from './worker.ts';

/** `slowestMs` is null where each try lasts until it is killed. */
type Row = { cases: number; failures: string[]; slowestMs: number | null };
export type Tally = Map<string, Row>;

/** Adds a round to what was counted before. */
export function count(tally: Tally, { name, cases, failures, slowestMs }: Round): void {
  const row = tally.get(name) ?? { cases: 0, failures: [], slowestMs: null };
  row.cases += cases;
  row.failures.push(...failures);
  if (slowestMs !== null) row.slowestMs = Math.max(row.slowestMs ?? 0, slowestMs);
  tally.set(name, row);
}

export function casesOf(tally: Tally): number {
  return [...tally.values()].reduce((sum, { cases }) => sum + cases, 0);
}

/** The table of docs/robustness.md. A round with a failure counts one, since it ends there. */
export function tableOf(tally: Tally): string {
  const rows = [...tally].map(
    ([name, { cases, failures, slowestMs }]) =>
      `| ${name} | ${cases.toLocaleString('en')} | ${failures.length} | ${slowestMs === null ? '–' : `${slowestMs.toFixed(0)} ms`} |`,
  );
  return ['| what is tried | tries | failures | slowest |', '| --- | ---: | ---: | ---: |', ...rows].join(
    '\n',
  );
}
