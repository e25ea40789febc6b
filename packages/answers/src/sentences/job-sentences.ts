import { jobSources } from '@neckfall/data';
import type { Job, JobCaution, JobSource, SeasonSummary } from '@neckfall/engine';
import type { Speaker } from '@neckfall/words';

/** A job by its name, with which of several it is. */
export function jobName({ id, name, why }: Pick<Job, 'id' | 'name' | 'why'>, { say }: Speaker): string {
  if (why.code === 'pull-green') return say('job-name.lift.pull-green');
  const plain = say(`job-name.${name}`);
  const { flight } = why.values;
  if (flight !== undefined) return say('job-name.flight', { name: plain, flight });
  const number = id.slice(name.length + 1);
  return number === '' ? plain : say('job-name.numbered', { name: plain, number });
}

/** What to do, when and why, in one sentence; of a job no longer open, what became of it. */
export function jobSentence(job: Job, summary: SeasonSummary, speaker: Speaker): string {
  const { say, day, dayRange } = speaker;
  const { state, from, best, to } = job;
  if (job.why.code === 'lifted' || state === 'now' || state === 'coming')
    return openSentence(job, summary, speaker);
  return say(`job.state.${state}`, {
    name: jobName(job, speaker),
    date: day(best),
    range: dayRange(from, to),
  });
}

/** The same of a job as long as it is open, whatever became of it. */
export function openSentence(
  { why, from, best, to, state }: Job,
  { years }: SeasonSummary,
  speaker: Speaker,
): string {
  const { code, values } = why;
  const isSome = typeof values.share === 'number' && values.share < 1;
  const words = {
    ...values,
    years,
    bestDay: best,
    when: whenWords({ from, best, to, state }, speaker),
    tray: yesOrNo('plantDay' in values),
    bed: yesOrNo('gramsForBed' in values || 'litresForBed' in values),
    hose: yesOrNo('minutes' in values),
    some: yesOrNo(isSome),
  };
  return speaker.job({ code, values: words });
}

const yesOrNo = (is: boolean) => (is ? 'yes' : 'no');

function whenWords(
  { from, best, to, state }: Pick<Job, 'from' | 'best' | 'to' | 'state'>,
  { say, day, dayRange }: Speaker,
): string {
  if (from === to) return state === 'now' ? say('job.when.today') : say('job.when.on', { date: day(best) });
  const range = dayRange(from, to);
  return state === 'now' ? say('job.when.now', { range }) : say('job.when.about', { date: day(best), range });
}

export function cautionSentence(caution: JobCaution, { say }: Speaker): string {
  return say(`job-caution.${caution}`);
}

/** Where a job's rule comes from: a title, or that nothing was read. */
export function jobSourceName(source: JobSource, { say }: Speaker): string {
  if (source === 'common-practice' || source === 'memory') return say(`job-source.${source}`);
  return jobSources[source].title;
}
