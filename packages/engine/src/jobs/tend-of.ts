import type { JobMark } from '../garden/index.ts';
import { type FeedAnswer, feedOf, type TendedCrop, type WaterAnswer, waterOf } from '../tend/index.ts';
import type { Job } from './job.ts';
import { jobsOf } from './jobs-of.ts';

/** All that tending a crop asks for. */
export type TendAnswer = { water: WaterAnswer; feed: FeedAnswer; jobs: Job[] };

/** Water, feed and work of a crop, the same wherever it is asked for. @param marks what became of its work, in the order in which it was said */
export function tendOf(crop: TendedCrop, marks: readonly JobMark[]): TendAnswer {
  const water = waterOf(crop, { efficiency: null, days: false });
  const feed = feedOf(crop);
  return { water, feed, jobs: jobsOf({ crop, water, feed, marks }) };
}
