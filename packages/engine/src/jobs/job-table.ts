import type { SettledCourse } from './course.ts';
import type { Due } from './due.ts';
import type { JobCaution, JobName, JobSource } from './job.ts';
import { thin, weed } from './rules/bed-work.ts';
import { feedStop, feeds } from './rules/feeding.ts';
import { checkStore, checkTops, clean, dry, store } from './rules/harvest.ts';
import { harden, plant, prickOut, sow, trim } from './rules/starting.ts';
import { mildew, onionFly, seedcornFly, thrips } from './rules/watching.ts';
import { water, waterStop } from './rules/watering.ts';

/** A kind of work: when it falls by the dates of a crop, and where it comes from. */
type JobKind = {
  source: JobSource;
  cautions: readonly JobCaution[];
  /** Done to plants in tray or bed: over once they are lifted. */
  isOfStanding: boolean;
  /** What delay costs: of two windows that close, the one that presses so many days more comes first (ours). */
  pressesDays: number;
  /** Comes round again: what was said of it before its days says nothing of them. */
  recurs?: true;
  /** Where the work has a part; everywhere where left out. */
  isHere?: (course: SettledCourse) => boolean;
  /** Its days; none where the crop doesn't ask for it. */
  rule: (course: SettledCourse) => Due | Due[] | null;
};

const isSown = ({ crop: { plan } }: SettledCourse) =>
  plan.start === 'direct-seed' || plan.start === 'raised-seedlings';
const isRaised = ({ crop: { plan } }: SettledCourse) => plan.start === 'raised-seedlings';

/** Latitude from which a pest of cool countries lives, ° (memory). */
const onionFlyFromDeg = 30;
const seedcornFlyFromDeg = 23.5;
const latitude = ({ crop: { site } }: SettledCourse) => site.climate.latitudeDeg;

/** All work on onions. A new kind is an entry here with its rule, a name, and words for it. */
export const jobTable: Readonly<Record<JobName, JobKind>> = {
  sow: {
    source: 'minnesota',
    cautions: ['treated-seed', 'white-rot', 'lamps'],
    isOfStanding: true,
    pressesDays: 7,
    isHere: isSown,
    rule: sow,
  },
  'prick-out': {
    source: 'iowa-2020',
    cautions: ['lamps'],
    isOfStanding: true,
    pressesDays: 0,
    isHere: isRaised,
    rule: prickOut,
  },
  trim: {
    source: 'iowa-2020',
    cautions: [],
    isOfStanding: true,
    pressesDays: 0,
    isHere: isRaised,
    rule: trim,
  },
  harden: {
    source: 'iowa-seedlings',
    cautions: ['forecast'],
    isOfStanding: true,
    pressesDays: 3,
    isHere: isRaised,
    rule: harden,
  },
  plant: {
    source: 'texas-planting',
    cautions: ['treated-seed', 'white-rot'],
    isOfStanding: true,
    pressesDays: 7,
    isHere: ({ crop: { plan } }) => plan.start !== 'direct-seed',
    rule: plant,
  },
  weed: { source: 'nebraska-weeds', cautions: [], isOfStanding: true, pressesDays: 14, rule: weed },
  thin: {
    source: 'illinois-sets',
    cautions: ['treated-seed'],
    isOfStanding: true,
    pressesDays: 0,
    rule: thin,
  },
  feed: {
    source: 'california-nitrogen',
    cautions: ['fertiliser', 'raw-manure'],
    isOfStanding: true,
    pressesDays: 7,
    rule: feeds,
  },
  'feed-stop': { source: 'utah-nitrogen', cautions: [], isOfStanding: true, pressesDays: 3, rule: feedStop },
  water: {
    source: 'fao-56',
    cautions: ['hose-bans', 'waste-water'],
    isOfStanding: true,
    pressesDays: 21,
    recurs: true,
    rule: water,
  },
  'water-stop': { source: 'memory', cautions: [], isOfStanding: true, pressesDays: 3, rule: waterStop },
  'watch-onion-fly': {
    source: 'wisconsin-maggot',
    cautions: ['labels', 'nets'],
    isOfStanding: true,
    pressesDays: 7,
    isHere: (course) => latitude(course) >= onionFlyFromDeg,
    rule: onionFly,
  },
  'watch-seedcorn-fly': {
    source: 'funderburk-1984',
    cautions: ['labels', 'nets'],
    isOfStanding: true,
    pressesDays: 3,
    isHere: (course) => Math.abs(latitude(course)) >= seedcornFlyFromDeg,
    rule: seedcornFly,
  },
  'watch-thrips': {
    source: 'jamieson-2012',
    cautions: ['labels'],
    isOfStanding: true,
    pressesDays: 3,
    rule: thrips,
  },
  'watch-mildew': {
    source: 'hildebrand-1982',
    cautions: ['labels'],
    isOfStanding: true,
    pressesDays: 3,
    recurs: true,
    rule: mildew,
  },
  'check-tops': {
    source: 'davis-dry-onions',
    cautions: [],
    isOfStanding: true,
    pressesDays: 3,
    recurs: true,
    rule: checkTops,
  },
  lift: {
    source: 'wright-2001',
    cautions: ['forecast'],
    isOfStanding: false,
    pressesDays: 14,
    rule: ({ lift }) => lift,
  },
  dry: {
    source: 'kansas-curing',
    cautions: ['heaters', 'dust'],
    isOfStanding: false,
    pressesDays: 14,
    rule: dry,
  },
  clean: {
    source: 'common-practice',
    cautions: ['dust', 'pets'],
    isOfStanding: false,
    pressesDays: 0,
    rule: clean,
  },
  store: {
    source: 'davis-dry-onions',
    cautions: ['lofts'],
    isOfStanding: false,
    pressesDays: 7,
    rule: store,
  },
  'check-store': {
    source: 'common-practice',
    cautions: ['dust', 'pets'],
    isOfStanding: false,
    pressesDays: 0,
    rule: checkStore,
  },
};
