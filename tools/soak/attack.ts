import { loadLater } from '@neckfall/words';
import fc from 'fast-check';

// as the command line does before it runs anything
await loadLater();

/** One class of hostile input, with its own generator and its own judge. */
export type Attack = {
  /** What is attacked, in a few words; the row of docs/robustness.md. */
  name: string;
  /** Cases of it among a hundred. */
  share: number;
  /** Tries `cases` inputs; the same seed gives the same inputs. */
  run: (seed: number, cases: number) => Promise<Tries>;
};

/** Failures are inputs told with what was wrong, the first of each run shrunk. */
type Tries = { cases: number; failures: readonly string[]; slowestMs: number };

/** A result of null says that all is well; a throw is a failure too. */
export function attack<Input>(
  name: string,
  share: number,
  inputs: fc.Arbitrary<Input>,
  misbehaviour: (input: Input) => Promise<string | null> | string | null,
): Attack {
  async function run(seed: number, cases: number): Promise<Tries> {
    let slowestMs = 0;
    const property = fc.asyncProperty(inputs, async (input) => {
      const from = performance.now();
      const wrong = await misbehaviour(input);
      slowestMs = Math.max(slowestMs, performance.now() - from);
      if (wrong !== null) throw new Error(wrong);
    });
    const { failed, counterexample, errorInstance } = await fc.check(property, { seed, numRuns: cases });
    if (!failed) return { cases, failures: [], slowestMs };
    const told = `seed ${seed}: ${fc.stringify(counterexample).slice(0, 500)}: ${errorInstance}`;
    return { cases, failures: [told], slowestMs };
  }
  return { name, share, run };
}
