import { cautionSentence, jobSentence } from '@neckfall/answers';
import type { Job } from '@neckfall/engine';
import type { Speaker } from '@neckfall/words';
import { sharedFrame, type Work, type WorkOnCrop } from '../documents/jobs-document.ts';
import { howWeKnow } from './how-we-know.ts';
import { wrap } from './wrap.ts';

const weekDays = 7;

/** What to do this week, then what comes, what is past, and what each rests on; or the work of the days asked for. */
export function jobsText(work: Work, speaker: Speaker): string {
  const { say } = speaker;
  const { crops, leftOut, week, today, window } = work;
  const cropOf = new Map(crops.flatMap((crop) => toldOf(crop).map((job) => [job, crop] as const)));
  const line = (job: Job) => sentenceOf(job, cropOf.get(job)!, crops.length > 1, speaker);
  const isOpen = ({ state, to }: Job) => (state === 'now' || state === 'coming') && to >= today;
  const told = [...cropOf.keys()].sort((a, b) => a.best - b.best);
  const lead = leadOf(work, speaker);
  const first = window ? told.filter(isOpen) : week.due;
  const nothing = say(window ? 'jobs.none' : week.next.length > 0 ? 'jobs.week.none' : 'jobs.week.over');
  const sections = [
    [lead, ...(first.length > 0 ? first.map(line) : [nothing])],
    titled(say('jobs.coming'), told.filter((job) => isOpen(job) && !first.includes(job)).map(line)),
    titled(say('jobs.past'), told.filter((job) => !isOpen(job)).map(line)),
    titled(
      say('jobs.left-out'),
      leftOut.map(({ name, why }) => say('jobs.left-out.one', { name, why })),
    ),
    titled(say('jobs.cautions'), cautionsOf(first, speaker)),
  ]
    .filter((lines) => lines.length > 0)
    .map(([title, ...lines]) => [wrap(title), ...lines.map((one) => `  ${wrap(one, 2)}`)].join('\n'));
  return `${[...sections, ...grounds(crops)].join('\n\n')}\n`;
}

function leadOf({ crops, today, window }: Work, { say, all, day, dayRange }: Speaker): string {
  const place = all([...new Set(crops.map(({ frame }) => frame.label))]);
  if (!window) return say('jobs.week', { place, range: dayRange(today, today + weekDays - 1) });
  const { from, to } = window;
  return to === null
    ? say('jobs.from', { place, date: day(from) })
    : say('jobs.between', { place, range: dayRange(from, to) });
}

/** Of looks through the store the next one: the others are like it. */
function toldOf({ jobs }: WorkOnCrop): Job[] {
  const next = jobs.find(
    ({ name, state }) => name === 'check-store' && (state === 'now' || state === 'coming'),
  );
  return jobs.filter((job) => job.name !== 'check-store' || job === next);
}

/** Named by its planting where there are several. */
function sentenceOf(
  job: Job,
  { planting, crop, frame }: WorkOnCrop,
  isOfMany: boolean,
  speaker: Speaker,
): string {
  const what = jobSentence(job, crop.summary, speaker);
  return isOfMany ? speaker.say('jobs.of', { name: planting?.name ?? frame.label, what }) : what;
}

const titled = (title: string, lines: readonly string[]) => (lines.length > 0 ? [title, ...lines] : []);

function cautionsOf(due: readonly Job[], speaker: Speaker): string[] {
  return [...new Set(due.flatMap(({ cautions }) => cautions))].map((caution) =>
    cautionSentence(caution, speaker),
  );
}

/** How we know, by place. */
function grounds(crops: readonly WorkOnCrop[]): string[] {
  const places = new Set(crops.map(({ frame }) => frame.label));
  return [...places].map((place) => {
    const here = crops.filter(({ frame }) => frame.label === place);
    return howWeKnow(sharedFrame(here), here.length === 1 ? here[0].crop.plan : null, null);
  });
}
