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

export type JobName = (typeof jobNames)[number];

export type JobState = 'gone-by' | 'now' | 'coming' | 'done' | 'left-out';

/** A piece of work with its days in a crop's season. */
export type Job = {
  /** Its name, with a number from the second on where it comes again: `feed`, `feed-2`. One of a crop has it. */
  id: string;
  name: JobName;
  from: DayNumber;
  best: DayNumber;
  to: DayNumber;
  state: JobState;
  /** Why then: the code of a message, with the numbers of this run that decided. */
  why: { code: string; values: Readonly<Record<string, number | string>> };
  /** Where the rule comes from; a key of the table of sources. */
  source: string;
  cautions: readonly string[];
};
