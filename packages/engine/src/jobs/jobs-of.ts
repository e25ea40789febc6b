import type { JobMark } from '../garden/index.ts';
import type { FeedAnswer, TendedCrop, WaterAnswer } from '../tend/index.ts';
import type { Job } from './job.ts';

/** What work on a crop rests on. */
export type JobGrounds = {
  crop: TendedCrop;
  water: WaterAnswer | null;
  feed: FeedAnswer | null;
  /** What became of its work so far, in the order in which it was said. */
  marks: readonly JobMark[];
};

/** The work on a crop from its preparation to its store, by day. */
export function jobsOf({ crop: { plan, summary, today } }: JobGrounds): Job[] {
  const fall = summary.neckFall.days;
  const jobs: Job[] = [];
  const isSown = plan.start === 'direct-seed' || plan.start === 'raised-seedlings';
  const start = plan.startDay;
  jobs.push({
    id: isSown ? 'sow' : 'plant',
    name: isSown ? 'sow' : 'plant',
    from: start - 3,
    best: start,
    to: start + 3,
    state: today < start - 3 ? 'coming' : today > start + 3 ? 'gone-by' : 'now',
    why: { code: 'start', values: {} },
    source: 'plan',
    cautions: [],
  });
  if (fall)
    jobs.push({
      id: 'lift',
      name: 'lift',
      from: fall.p10,
      best: fall.p50,
      to: fall.p90,
      state: today < fall.p10 ? 'coming' : today > fall.p90 ? 'gone-by' : 'now',
      why: { code: 'tops-over', values: {} },
      source: 'common-practice',
      cautions: [],
    });
  return jobs;
}
