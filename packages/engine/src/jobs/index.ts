export { type Job, type JobName, type JobState, jobNames } from './job.ts';
export { type JobGrounds, jobsOf } from './jobs-of.ts';
