import type { DayNumber } from '../calendar/index.ts';

/** Work on a crop, in the order in which it comes. */
export const jobNames = [
  'sow',
  'prick-out',
  'trim',
  'harden',
  'plant',
  'weed',
  'thin',
  'feed',
  'feed-stop',
  'water',
  'water-stop',
  'watch-onion-fly',
  'watch-seedcorn-fly',
  'watch-thrips',
  'watch-mildew',
  'check-tops',
  'lift',
  'dry',
  'clean',
  'store',
  'check-store',
] as const;

/** One of {@link jobNames}. */
export type JobName = (typeof jobNames)[number];

/** Where a job stands: by its days, or by what the grower said of it. */
export type JobState = 'gone-by' | 'now' | 'coming' | 'done' | 'left-out';

/** Where rules come from; their titles stand in the table of sources. Of two nothing was read: they say so. */
export const jobSources = [
  'california-nitrogen',
  'davis-dry-onions',
  'fao-56',
  'funderburk-1984',
  'hildebrand-1982',
  'illinois-sets',
  'iowa-2020',
  'iowa-seedlings',
  'jamieson-2012',
  'kansas-curing',
  'minnesota',
  'nebraska-weeds',
  'texas-planting',
  'utah-nitrogen',
  'wisconsin-maggot',
  'wright-2001',
  'common-practice',
  'memory',
] as const;

/** One of {@link jobSources}. */
export type JobSource = (typeof jobSources)[number];

/** What can hurt someone at the work, or beside it. */
export const jobCautions = [
  'treated-seed',
  'white-rot',
  'lamps',
  'fertiliser',
  'raw-manure',
  'hose-bans',
  'waste-water',
  'labels',
  'nets',
  'forecast',
  'heaters',
  'dust',
  'pets',
  'lofts',
] as const;

/** One of {@link jobCautions}. */
export type JobCaution = (typeof jobCautions)[number];

/** Why a job falls when it does: the code of a message, with the numbers of this run that decided. */
export type JobWhy = { code: string; values: Readonly<Record<string, number | string>> };

/** A stretch of days with the best one. */
export type JobDays = { from: DayNumber; best: DayNumber; to: DayNumber };

/** A piece of work with its days in a crop's season. */
export type Job = JobDays & {
  /** Its name, with a number from the second on where it comes again: `feed`, `feed-2`. One of a crop has it. */
  id: string;
  name: JobName;
  state: JobState;
  why: JobWhy;
  source: JobSource;
  cautions: readonly JobCaution[];
};
