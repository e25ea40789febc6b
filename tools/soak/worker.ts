// Tries its share of the cases of every class, a round of each in turn, and tells the parent after each round.
import { attacks } from './attacks.ts';

export type Round = { name: string; cases: number; failures: readonly string[]; slowestMs: number | null };

/** Cases of all classes in one round; each round has a seed of its own, so that it can be run again by itself. */
const round = 1000;
const [cases, seed] = process.argv.slice(2).map(Number);

for (let done = 0; done < cases; done += round) {
  for (const { name, share, run } of attacks) {
    const tries = await run(
      seed * 1_000_000 + done,
      Math.round((share * Math.min(round, cases - done)) / 100),
    );
    process.send?.({ name, ...tries } satisfies Round);
  }
}
process.exit();
