export type { JobGrounds, Kept } from './course.ts';
export { averageDegrees, type DegreeDays, modifiedDegrees, singleSineDegrees } from './degree-days.ts';
export {
  type Job,
  type JobCaution,
  type JobName,
  type JobSource,
  type JobState,
  jobCautions,
  jobNames,
  jobSources,
} from './job.ts';
export { jobTable } from './job-table.ts';
export { jobsInWeek, type WeekJobs } from './jobs-in-week.ts';
export { jobsOf } from './jobs-of.ts';
export { mildewShares, mildewWeather } from './mildew-weather.ts';
export { pestDates, pests } from './pests.ts';
export { tendOf } from './tend-of.ts';
