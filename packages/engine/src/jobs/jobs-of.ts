import { courseOf, type JobGrounds, type SettledCourse } from './course.ts';
import type { Due } from './due.ts';
import { type Job, type JobName, jobNames } from './job.ts';
import { jobTable } from './job-table.ts';
import { liftOf } from './rules/harvest.ts';
import { becameOf, putOff, stateOf } from './what-became.ts';

/** The work on a crop from its preparation to its store, by best day. */
export function jobsOf(grounds: JobGrounds): Job[] {
  const course = courseOf(grounds);
  const lift = liftOf(course);
  const { crop, marks } = grounds;
  const settled: SettledCourse = {
    ...course,
    lift: lift && putOff(lift, becameOf('lift', marks, crop.today), course.start),
  };
  const jobs = jobNames.flatMap((name) => {
    const { rule, isHere } = jobTable[name];
    if (isHere && !isHere(settled)) return [];
    return [rule(settled) ?? []].flat().flatMap((due) => jobOf(name, due, settled));
  });
  // of one day in the order of the table
  return jobs.sort((a, b) => a.best - b.best);
}

function jobOf(name: JobName, due: Due, course: SettledCourse): Job[] {
  const { source, cautions, isOfStanding, recurs } = jobTable[name];
  const { crop, marks, start, liftedOn } = course;
  const { number = 1 } = due;
  const id = number === 1 ? name : `${name}-${number}`;
  const became = becameOf(id, marks, crop.today, recurs ? due.from : null);
  const { why, from, best, to } = name === 'lift' ? due : putOff(due, became, start);
  const state = stateOf({ ...due, from, best, to }, became, crop.today);
  const job: Job = { id, name, from, best, to, state, why, source, cautions };
  if (liftedOn === null || !isOfStanding || state === 'done' || state === 'left-out') return [job];
  // what was not done to plants before they were lifted is over
  if (from > liftedOn) return [];
  const until = (day: number) => Math.min(day, liftedOn);
  return [{ ...job, best: until(best), to: until(to), state: 'gone-by' }];
}
