export { type SeasonJob, seasonJobs } from './season-jobs.ts';
export { type WeekCode, weekOf } from './week-of.ts';
