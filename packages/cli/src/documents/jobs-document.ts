import { cautionSentence, jobSourceName, openSentence } from '@neckfall/answers';
import { formatDay, type Job, type TendedCrop } from '@neckfall/engine';
import type { Frame } from '../frame/frame.ts';
import type { CsvValue } from '../output/csv.ts';
import { documentHead } from './document-head.ts';
import type { JobsDocument } from './jobs-schema.ts';

/** A crop with the work on it. */
export type WorkOnCrop = {
  /** Of a garden file; null where the plan is of the command line. */
  planting: { id: string; name: string } | null;
  /** The onion by its name; null where it has none. */
  cultivar: string | null;
  crop: TendedCrop;
  frame: Frame;
  jobs: readonly Job[];
};

/** A planting whose work is not told, and why not. */
export type LeftOut = { id: string; name: string; why: string };

/** What is told of work: the crops with their jobs of the days asked for, and the jobs of this week. */
export type Work = {
  crops: readonly WorkOnCrop[];
  leftOut: readonly LeftOut[];
  /** Most urgent first; where there are none, those to come next. */
  week: { due: readonly Job[]; next: readonly Job[] };
  today: number;
  /** Days of which work was asked for; null: all. Its end is null where all that follows was asked for. */
  window: { from: number; to: number | null } | null;
};

/** The frame of all: what each crop stands on, said once. */
export function sharedFrame(crops: readonly WorkOnCrop[]): Frame {
  const [{ frame }] = crops;
  const each = (field: 'assumed' | 'warnings' | 'sources') => [
    ...new Set(crops.flatMap((crop) => crop.frame[field])),
  ];
  return { ...frame, assumed: each('assumed'), warnings: each('warnings'), sources: each('sources') };
}

export function jobsDocument({ crops, leftOut, week, today }: Work): JobsDocument {
  const { place, ...head } = documentHead(sharedFrame(crops));
  const isOnePlace = new Set(crops.map(({ frame }) => frame.label)).size === 1;
  const idOf = (job: Job) => {
    const crop = crops.find(({ jobs }) => jobs.includes(job));
    return { planting: crop?.planting?.id ?? null, id: job.id };
  };
  return {
    schema: 'neckfall/jobs@1',
    ...head,
    place: isOnePlace ? place : null,
    today: formatDay(today),
    plantings: crops.map(({ planting, cultivar, crop: { plan, liftedOn }, frame }) => ({
      id: planting?.id ?? null,
      name: planting?.name ?? null,
      cultivar,
      place: frame.label,
      start: plan.start,
      date: formatDay(plan.startDay),
      liftedOn: liftedOn === null ? null : formatDay(liftedOn),
    })),
    leftOut: [...leftOut],
    thisWeek: week.due.map(idOf),
    jobs: crops.flatMap((crop) => crop.jobs.map((job) => jobOf(job, crop))),
  };
}

function jobOf(job: Job, { planting, crop, frame: { speaker } }: WorkOnCrop) {
  return {
    id: job.id,
    planting: planting?.id ?? null,
    job: job.name,
    from: formatDay(job.from),
    best: formatDay(job.best),
    to: formatDay(job.to),
    state: job.state,
    why: openSentence(job, crop.summary, speaker),
    source: jobSourceName(job.source, speaker),
    cautions: job.cautions.map((caution) => cautionSentence(caution, speaker)),
  };
}

/** A row a job. */
export function jobsRows({ crops }: Work): Record<string, CsvValue>[] {
  return crops.flatMap((crop) =>
    crop.jobs.map((job) => {
      const { cautions, ...told } = jobOf(job, crop);
      return { ...told, planting: told.planting ?? '', name: crop.planting?.name ?? crop.frame.label };
    }),
  );
}
