import type { DayNumber } from '../calendar/index.ts';
import { warmed } from '../climate/index.ts';
import { bulbDiameterMm, type CultivarTraits, plantValuesOf, type Verdict } from '../plant/index.ts';
import {
  judge,
  openSite,
  type Plan,
  plantOutDayOf,
  runnerOf,
  type Site,
  stage,
  startedOn,
} from '../season/index.ts';

/** What the end of a crop may hang on. */
type Cause = 'warmth' | 'day-length' | 'start';

/** How far each is moved: °C all year, hours of the day length needed, days of the start. */
const nudges = { warmth: 1, 'day-length': 0.3, start: 10 } as const satisfies Record<Cause, number>;

/** How a crop fails, size apart. */
type Failure = Exclude<Verdict, 'good' | 'small'>;

/** What comes of moving one cause. */
export type Nudged = {
  /** The cause moved, with its sign: + is warmer, longer days needed, a later start. */
  by: number;
  /** Days by which tops go over later; negative: sooner. Null: they don't. */
  neckFallDays: number | null;
  /** Millimetres by which the bulb is larger; null where tops don't go over. */
  diameterMm: number | null;
  /** The failure that comes of it and does not come without. */
  failure: Failure | null;
};

/** One cause moved either way. */
export type Pull = { cause: Cause; less: Nudged; more: Nudged };

/**
 * What moves the tops of this crop most, here: a few seasons of the mean climate with one thing otherwise in each. The
 * strongest comes first: what ends in a failure, then by days. Null where tops don't go over in the mean climate.
 */
export function whatMovesIt(site: Site, plan: Plan): Pull[] | null {
  const usual = seasonOf(site, plan, null);
  const { neckFallDay, nurseryTempC } = usual;
  if (neckFallDay === null) return null;
  const pull = (cause: Cause, run: (by: number) => MeanSeason): Pull => {
    const nudged = (by: number) => compare({ ...usual, neckFallDay }, run(by), by);
    return { cause, less: nudged(-nudges[cause]), more: nudged(nudges[cause]) };
  };
  const pulls = [
    pull('warmth', (by) => seasonOf(warmerSite(site, by), plan, { nurseryTempC })),
    pull('day-length', (by) => seasonOf(site, needing(site, plan, by), { nurseryTempC })),
    pull('start', (by) => seasonOf(site, startedLater(plan, by), { nurseryTempC })),
  ];
  return pulls.sort((a, b) => strength(strongerOf(b)) - strength(strongerOf(a)));
}

/** The direction in which a cause does more. */
export function strongerOf({ less, more }: Pull): Nudged {
  return strength(less) > strength(more) ? less : more;
}

/** More than any count of days. */
const failing = 1000;

function strength({ neckFallDays, failure }: Nudged): number {
  return failure !== null || neckFallDays === null ? failing : Math.abs(neckFallDays);
}

type MeanSeason = {
  neckFallDay: DayNumber | null;
  diameterMm: number;
  verdict: Verdict;
  nurseryTempC: number | null;
};

/** @param nursery kept as it is without the nudge, so that a degree does not move trays outdoors */
function seasonOf(site: Site, plan: Plan, nursery: { nurseryTempC: number | null } | null): MeanSeason {
  const runner = runnerOf(site, plan);
  if (nursery) runner.nurseryTempC = nursery.nurseryTempC;
  const outcome = runner.meanSeason();
  const { dryMatterShare } = runner.crop.type;
  return {
    neckFallDay: outcome.reached === stage.fallen ? plan.startDay + outcome.fellOn : null,
    diameterMm: bulbDiameterMm(outcome.bulbDryG / dryMatterShare),
    // against no other bulb: size has its own figure
    verdict: judge(outcome, plan, dryMatterShare, 0),
    nurseryTempC: runner.nurseryTempC,
  };
}

function compare(usual: MeanSeason & { neckFallDay: DayNumber }, other: MeanSeason, by: number): Nudged {
  const { neckFallDay, diameterMm, verdict } = other;
  const isSound = verdict === 'good' || verdict === 'small';
  return {
    by,
    neckFallDays: neckFallDay === null ? null : neckFallDay - usual.neckFallDay,
    diameterMm: neckFallDay === null ? null : diameterMm - usual.diameterMm,
    failure: isSound || verdict === usual.verdict ? null : verdict,
  };
}

function warmerSite(site: Site, byC: number): Site {
  const { climate, years, seed, values, dayTable } = site;
  // the Sun stays as it is
  return { ...openSite({ climate: warmed(climate, byC), years, seed, values }), dayTable };
}

const noTraits: CultivarTraits = {
  criticalPhotoperiodH: null,
  ripeningFactor: null,
  boltingFactor: null,
  dryMatterShare: null,
};

function needing(site: Site, plan: Plan, moreH: number): Plan {
  const { criticalPhotoperiodH } = plantValuesOf(site.values, plan);
  return {
    ...plan,
    traits: { ...noTraits, ...plan.traits, criticalPhotoperiodH: criticalPhotoperiodH + moreH },
  };
}

function startedLater(plan: Plan, days: number): Plan {
  const plantOutDay = plantOutDayOf(plan);
  return startedOn(plan, plan.startDay + days, plantOutDay === null ? null : plantOutDay + days);
}
