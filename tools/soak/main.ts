// npm run soak -- [--cases N] [--seed S]: the fuzz tests' own cases, as many as asked for, on all cores.
import { fork } from 'node:child_process';
import { availableParallelism } from 'node:os';
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';

const { values } = parseArgs({
  options: { cases: { type: 'string', default: '1000000' }, seed: { type: 'string', default: '1' } },
});
const cases = Number(values.cases);
const seed = Number(values.seed);
if (!Number.isInteger(cases) || cases < 1)
  throw new Error(`--cases ${values.cases}: expected a whole number`);
if (!Number.isInteger(seed)) throw new Error(`--seed ${values.seed}: expected a whole number`);

/** A round of cases that takes longer hangs, ms. */
const longest = 300_000;

const hands = availableParallelism();
const from = performance.now();
const done = Array.from({ length: hands }, () => 0);
let failed = false;

const ends = Array.from({ length: hands }, (_, hand) => {
  const share = Math.floor((cases * (hand + 1)) / hands) - Math.floor((cases * hand) / hands);
  const child = fork(
    fileURLToPath(new URL('./worker.ts', import.meta.url)),
    [String(share), String(seed + hand)],
    {
      execArgv: [...process.execArgv, '--max-old-space-size=512'],
    },
  );
  const watch = setInterval(() => {
    process.stderr.write(`\nno end after case ${done[hand]} of seed ${seed + hand}\n`);
    child.kill('SIGKILL');
  }, longest);
  child.on('message', (count) => {
    watch.refresh();
    done[hand] = Number(count);
    const total = done.reduce((sum, each) => sum + each, 0);
    const rate = (1000 * total) / (performance.now() - from);
    process.stderr.write(`\r${total} of ${cases} cases, ${rate.toFixed(0)} a second`);
  });
  return new Promise<void>((resolve) =>
    child.on('exit', (code) => {
      clearInterval(watch);
      if (code !== 0) failed = true;
      resolve();
    }),
  );
});
await Promise.all(ends);
const seconds = ((performance.now() - from) / 1000).toFixed(0);
process.stdout.write(
  failed
    ? '\nSome cases misbehaved; see above.\n'
    : `\n${cases} cases in ${seconds} s, seed ${seed}: all well behaved\n`,
);
process.exitCode = failed ? 1 : 0;
