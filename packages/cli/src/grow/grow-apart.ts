import { availableParallelism } from 'node:os';
import { Worker } from 'node:worker_threads';
import {
  dealKinds,
  type GrowingOptions,
  type GrownKind,
  growKinds,
  type Kind,
  type Site,
  type SiteOptions,
} from '@neckfall/engine';

/** What a thread needs to grow its share: plain values. */
export type GrowJob = {
  site: SiteOptions;
  kinds: readonly Kind[];
  firstDay: number;
  options: GrowingOptions;
};

/** Below this many kinds a second thread is not up before the work is done. */
const fewKinds = 24;

/** Grows kinds at their best starts, on a second core where there is one and enough work for it. */
export async function growApart(
  site: Site,
  job: GrowJob,
  program = new URL(import.meta.url),
): Promise<GrownKind[]> {
  const { kinds, firstDay, options } = job;
  // run from its sources there is no program for a thread to run
  const isAlone = kinds.length < fewKinds || availableParallelism() < 2 || !program.pathname.endsWith('.mjs');
  if (isAlone) return grow(site, kinds, firstDay, options);
  const [own, other] = dealKinds(kinds, 2);
  const others = growElsewhere({ ...job, kinds: other }, program);
  // the failure of the thread is met when it is waited for
  others.catch(() => {});
  const grown = grow(site, own, firstDay, options);
  return [...grown, ...(await others)];
}

export function grow(
  site: Site,
  kinds: readonly Kind[],
  firstDay: number,
  options: GrowingOptions,
): GrownKind[] {
  const steps = growKinds(site, kinds, firstDay, options);
  for (let step = steps.next(); ; step = steps.next()) if (step.done) return step.value;
}

function growElsewhere(job: GrowJob, program: URL): Promise<GrownKind[]> {
  return new Promise((resolve, reject) => {
    const worker = new Worker(program, { workerData: { grow: job } });
    worker.once('message', resolve);
    worker.once('error', reject);
    worker.once('exit', (code) => reject(new Error(`a thread ended with ${code}`)));
  });
}
