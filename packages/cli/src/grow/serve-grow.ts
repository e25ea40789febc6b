import { parentPort, workerData } from 'node:worker_threads';
import { openSite } from '@neckfall/engine';
import { type GrowJob, grow } from './grow-apart.ts';

/** A thread that grows its share of the kinds and ends. */
export function serveGrow(): void {
  const { site, kinds, firstDay, options } = (workerData as { grow: GrowJob }).grow;
  parentPort?.postMessage(grow(openSite(site), kinds, firstDay, options));
}
