import { jobName, jobSourceName } from '@neckfall/answers';
import { type Job, type JobMark, jobsInWeek, jobsOf, tendOf } from '@neckfall/engine';
import type { Speaker } from '@neckfall/words';
import { jobsDocument, jobsRows, type Work } from '../documents/jobs-document.ts';
import { type RawJobsOptions, readSaid, readWindow } from '../options/jobs-options.ts';
import { readSetting } from '../options/place-options.ts';
import { csv } from '../output/csv.ts';
import type { WholeFile } from '../output/whole-file.ts';
import { jobsText } from '../text/jobs-text.ts';
import type { Answer } from './answer.ts';
import { type CropAtWork, cropsAtWork } from './crops-at-work.ts';
import { draftWith, markOf } from './mark-job.ts';
import type { RawTended } from './tended.ts';
import { calendarDraft } from './work-calendar.ts';

/** The work on crops; `keep` puts what was said of a job into the garden, and the work into its calendar file. */
export function jobsAnswer(
  target: string | undefined,
  raw: RawTended & RawJobsOptions,
  speaker: Speaker,
): { answer: Answer; keep: () => void } {
  const { today } = readSetting(raw);
  const window = readWindow(raw, today);
  const said = readSaid(raw, today);
  const { crops: found, leftOut, warnings } = cropsAtWork(target, raw, speaker);
  const mark = said && markOf(said, found[0], today);
  const crops = mark ? [marked(found[0], mark)] : found;
  const isTold = ({ from, to }: Job) =>
    window === null || (to >= window.from && (window.to === null || from <= window.to));
  const told = crops.map((crop) => ({ ...crop, jobs: crop.jobs.filter(isTold) }));
  for (const { frame, jobs } of told)
    frame.sources.push(...jobs.filter(isSourced).map(({ source }) => jobSourceName(source, speaker)));
  const all = told.flatMap(({ jobs }) => jobs);
  const bare = [
    ...new Set(all.filter((job) => !isSourced(job)).map((job) => jobName({ ...job, id: job.name }, speaker))),
  ];
  if (bare.length > 0) told[0].frame.assumed.push(speaker.say('jobs.unsourced', { jobs: speaker.all(bare) }));
  const work: Work = { crops: told, leftOut, week: jobsInWeek(all, today), today, window };
  return {
    answer: {
      text: () => jobsText(work, speaker),
      json: () => jobsDocument(work),
      csv: () => csv(jobsRows(work)),
      warnings: [...new Set([...warnings, ...crops.flatMap(({ frame }) => frame.warnings)])],
    },
    keep: () =>
      keepAll([
        mark && target !== undefined && (() => draftWith(mark, target, speaker)),
        raw.ics !== undefined && (() => calendarDraft(raw.ics ?? '', told, today, speaker)),
      ]),
  };
}

const isSourced = ({ source }: Job) => source !== 'memory' && source !== 'common-practice';

function marked(crop: CropAtWork, mark: JobMark): CropAtWork {
  return { ...crop, jobs: jobsOf({ ...tendOf(crop.crop, crop.kept), marks: [...crop.marks, mark] }) };
}

type Draft = Pick<WholeFile, 'keep' | 'drop'>;

/** All files or none: each is written before the first is kept. */
function keepAll(makes: readonly ((() => Draft) | false | null)[]): void {
  const drafts: Draft[] = [];
  try {
    for (const make of makes) if (make) drafts.push(make());
    for (const draft of drafts) draft.keep();
  } catch (error) {
    for (const draft of drafts) draft.drop();
    throw error;
  }
}
