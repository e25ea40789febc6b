import { type Pool, threadPool } from '../threads/thread-pool.ts';
import type { Answered } from './answer-rows.ts';
import type { BatchJob } from './line-maker.ts';
import type { Row } from './rows.ts';

/** Whoever answers the rows. */
export type Crew = Pool<readonly Row[], Answered>;

export function threadCrew(job: BatchJob, program: URL, hands?: number): Crew {
  return threadPool({ batch: job }, program, hands);
}
