import { jobName } from '@neckfall/answers';
import type { DayNumber, Job, JobMarkState } from '@neckfall/engine';
import { markOf, withMark, withoutMark } from '../../../garden/job-marks.ts';
import { changeGarden } from '../../../state/garden.ts';
import { planting } from '../../../state/planting.ts';
import { voice } from '../../../state/settings.ts';
import { today } from '../../../state/today.ts';
import { type ToldAt, tell } from '../told.ts';

export type WorkAt = Extract<ToldAt, 'week' | 'work'>;

/** Says what became of a piece of work on the planting shown; false where that failed. @param until where it is put off */
export async function markWork(
  job: Job,
  at: WorkAt,
  state: JobMarkState,
  until: DayNumber | null = null,
): Promise<boolean> {
  const { id, name } = planting.value ?? { id: '', name: '' };
  const mark = markOf(job.id, state, today.value, until);
  const isDone = await changeGarden({ code: 'work', name }, (now) => now && withMark(now, id, mark));
  const { say, dayWithYear } = voice.value;
  const words = say(`app.work.told.${state}`, {
    what: jobName(job, voice.value),
    date: dayWithYear(until ?? today.value),
  });
  return tell(isDone, { at, words, of: id });
}

/** Takes back what was said of a piece of work, on whatever day. */
export async function reopenWork(job: Job): Promise<boolean> {
  const { id, name } = planting.value ?? { id: '', name: '' };
  const isDone = await changeGarden({ code: 'work', name }, (now) => now && withoutMark(now, id, job.id));
  const words = voice.value.say('app.work.told.open', { what: jobName(job, voice.value) });
  return tell(isDone, { at: 'work', words, of: id });
}
