// npm run soak -- [--cases N] [--minutes M] [--seed S] [--kills N] [--write]: the hostile inputs of the tests, many more
// of them, on all cores; then N kills, a fifth of them of the browser, three in ten while a garden file is recorded
// into. --write puts the tables in docs/robustness.md.
import { fork } from 'node:child_process';
import { readFileSync, writeFileSync } from 'node:fs';
import { availableParallelism } from 'node:os';
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';
import { randomSource } from '../../packages/engine/src/math/index.ts';
import { killOut, killRecord } from './kill-out.ts';
import { killPages } from './kill-pages.ts';
import { casesOf, count, type Tally, tableOf } from './tally.ts';
import type { Round } from './worker.ts';

const { values } = parseArgs({
  options: {
    cases: { type: 'string', default: '1000000' },
    minutes: { type: 'string', default: '1440' },
    seed: { type: 'string', default: '1' },
    kills: { type: 'string', default: '0' },
    write: { type: 'boolean', default: false },
  },
});
const cases = whole('cases', values.cases);
const minutes = whole('minutes', values.minutes);
const seed = whole('seed', values.seed);
const kills = Number(values.kills);

/** A round of cases that takes longer hangs, ms. */
const longest = 300_000;

const hands = availableParallelism();
const from = performance.now();
const tally: Tally = new Map();
let broken = false;

const children = Array.from({ length: hands }, (_, hand) =>
  fork(
    fileURLToPath(new URL('./worker.ts', import.meta.url)),
    [String(Math.ceil(cases / hands)), String(seed + hand)],
    { execArgv: [...process.execArgv, '--max-old-space-size=512'] },
  ),
);
const ending = setTimeout(() => {
  for (const child of children) child.kill('SIGKILL');
}, minutes * 60_000);
await Promise.all(children.map((child, hand) => ended(child, seed + hand)));
clearTimeout(ending);

const seconds = ((performance.now() - from) / 1000).toFixed(0);
if (kills > 0) {
  // one after another: each times a run by itself to choose its moments
  count(tally, await killOut(Math.round(kills * 0.5), randomSource(seed).uniform));
  count(tally, await killRecord(Math.round(kills * 0.3), randomSource(seed + 2).uniform));
  count(tally, await killPages(Math.round(kills * 0.2), randomSource(seed + 1).uniform));
}
const failures = [...tally.values()].flatMap((row) => row.failures);
for (const failure of failures) process.stderr.write(`${failure}\n`);
const told = `${casesOf(tally).toLocaleString('en')} tries in ${seconds} s, seed ${seed}, Node ${process.versions.node}:`;
process.stdout.write(`\n${told}\n\n${tableOf(tally)}\n`);
if (values.write) writeTable(`${told}\n\n${tableOf(tally)}`);
process.exitCode = failures.length > 0 || broken ? 1 : 0;

function ended(child: ReturnType<typeof fork>, ownSeed: number): Promise<void> {
  let before = '';
  const watch = setTimeout(() => {
    process.stderr.write(`\nno end after ${before} of seed ${ownSeed}\n`);
    broken = true;
    child.kill('SIGKILL');
  }, longest);
  child.on('message', (message) => {
    const round = message as Round;
    watch.refresh();
    count(tally, round);
    before = round.name;
    process.stderr.write(`\r${casesOf(tally)} of ${cases}`);
  });
  return new Promise((resolve) =>
    child.on('exit', (code) => {
      clearTimeout(watch);
      // null: the time was up
      if (code !== 0 && code !== null) broken = true;
      resolve();
    }),
  );
}

function writeTable(table: string): void {
  const path = fileURLToPath(new URL('../../docs/robustness.md', import.meta.url));
  const [begin, end] = ['<!-- soak: written by npm run soak -- --write -->', '<!-- soak: end -->'];
  const page = readFileSync(path, 'utf8');
  const [head] = page.split(begin);
  const [, tail] = page.split(end);
  writeFileSync(path, `${head}${begin}\n\n${table}\n\n${end}${tail}`);
}

function whole(name: string, text: string): number {
  const number = Number(text);
  if (Number.isInteger(number) && number > 0) return number;
  throw new Error(`--${name} ${text}: expected a whole number above 0`);
}
