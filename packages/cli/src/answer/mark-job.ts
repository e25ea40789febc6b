import { randomBytes } from 'node:crypto';
import { drawnId, formatDay, idBytes, type JobMark } from '@neckfall/engine';
import type { Speaker } from '@neckfall/words';
import { findPlanting } from '../options/find-planting.ts';
import type { SaidOfJob } from '../options/jobs-options.ts';
import { nearest } from '../refusal/nearest.ts';
import { refuse } from '../refusal/refusal.ts';
import { gardenDraft, gardenWith, readForChange } from './change-garden.ts';
import type { CropAtWork } from './crops-at-work.ts';

/** What was said of a job of a crop, as its garden file keeps it. */
export function markOf(
  { flag, job, state, until }: SaidOfJob,
  { jobs, planting }: CropAtWork,
  today: number,
): JobMark {
  const ids = jobs.map(({ id }) => id);
  if (!ids.includes(job)) {
    const values = { value: job, name: planting?.name ?? '' };
    throw refuse('job-unknown', {
      field: flag,
      values,
      expected: ids.join(', '),
      nearest: nearest(job, ids),
    });
  }
  return {
    id: drawnId(randomBytes(idBytes)),
    plantingId: planting?.id ?? null,
    job,
    state,
    date: formatDay(today),
    ...(until !== null && { until: formatDay(until) }),
  };
}

/** The garden file with a mark more, in the making. */
export function draftWith(mark: JobMark, path: string, speaker: Speaker) {
  const file = readForChange(path);
  const planting = findPlanting(file.garden, mark.plantingId ?? '', path, speaker);
  return gardenDraft(path, file.bytes, gardenWith(file, planting, 'jobs', mark, path));
}
