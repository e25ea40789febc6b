import type { StartTrial } from '@neckfall/engine';

/** Weeks next to each other that come out alike, in the order of the year. */
export function runsAlike(starts: readonly StartTrial[]): StartTrial[][] {
  const runs: StartTrial[][] = [];
  for (const trial of starts) {
    const run = runs.at(-1);
    if (run && isAlike(run[0], trial)) run.push(trial);
    else runs.push([trial]);
  }
  return runs;
}

/** The same in a year taken as a circle: a run over New Year is one, and stands last. */
export function runsAround(starts: readonly StartTrial[]): StartTrial[][] {
  const runs = runsAlike(starts);
  const last = runs.at(-1);
  if (runs.length < 2 || !last || !isAlike(last[0], runs[0][0])) return runs;
  return [...runs.slice(1, -1), [...last, ...runs[0]]];
}

function isAlike(
  { hindrance: hereA, summary: a }: StartTrial,
  { hindrance: hereB, summary: b }: StartTrial,
): boolean {
  if (hereA !== null || hereB !== null) return hereA === hereB;
  return a.outcome === b.outcome && a.gamble === b.gamble;
}
