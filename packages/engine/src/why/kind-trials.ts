import { climateYearDays } from '../calendar/index.ts';
import { isAutumnStart } from '../choice/index.ts';
import { hoursFromHome, type OnionType, onionTypes, plantValuesOf, ramp } from '../plant/index.ts';
import type { Site } from '../season/index.ts';
import { shortestDay, springDay } from './spring.ts';
import { type CauseTrial, changed, type Otherwise, type Saying } from './trials.ts';
import type { Change } from './what-if.ts';

/** Kinds that few would doubt are causes oftener than those that the district grows. */
const kindPriors = { away: 1, atHome: 0.15, mixedUp: 0.06, unsaid: 0.15 } as const;
/** A longest day this little past the need turns few plants, h. */
const barelyH = 0.3;

/** Kinds that the plan might have had instead of its own. */
export function kindTrials({ trial, said }: Saying): CauseTrial[] {
  const { site, plan } = trial;
  const winters = isAutumnStart(plan.startDay, site.climate.latitudeDeg);
  const away = (type: OnionType) => hoursFromHome(type, site.longestDayH, winters);
  const prior = away(plan.type) > 0 ? kindPriors.away : kindPriors.atHome;
  const needH = plantValuesOf(site.values, plan).criticalPhotoperiodH;
  const longestH = longestPhotoperiodH(site);
  const others = onionTypes.filter((type) => type !== plan.type);
  const needOf = (type: OnionType) => site.values.types[type].criticalPhotoperiodH;
  const of = (type: OnionType): Otherwise => ({
    trial: changed(trial, { type, traits: null }),
    change: { code: 'other-kind', type },
  });
  const atHome = others.filter((type) => away(type) === 0);
  const earlier = atHome.filter((type) => needOf(type) < needH).map(of);
  const later = atHome.filter((type) => needOf(type) > needH).map(of);
  const late = longestH < needH + barelyH ? 'days-too-short' : 'type-too-late';
  const tried: CauseTrial[] = [];
  if (earlier.length > 0)
    tried.push({
      cause: late,
      prior: late === 'days-too-short' ? kindPriors.away : prior,
      told: true,
      without: earlier,
    });
  if (later.length > 0)
    tried.push({
      cause: 'type-too-early',
      prior: winters ? prior : Math.max(prior, kindPriors.away * noTimeFor(site, needH)),
      told: true,
      without: later,
    });
  if (!said.has('type')) tried.push(...unsaidKind(others, needOf, needH, late, of));
  tried.push({
    cause: 'wrong-seed',
    prior: kindPriors.mixedUp,
    told: false,
    within: others.map((type) => of(type).trial),
    change: { code: 'fresh-packet' },
  });
  return tried;
}

/** Which onion it was nobody said: one that starts its bulbs sooner or later than that which was taken. */
function unsaidKind(
  others: readonly OnionType[],
  needOf: (type: OnionType) => number,
  needH: number,
  late: 'days-too-short' | 'type-too-late',
  of: (type: OnionType) => Otherwise,
): CauseTrial[] {
  const within = (is: (type: OnionType) => boolean) => others.filter(is).map((type) => of(type).trial);
  const change: Change = { code: 'usual-kind' };
  return [
    {
      cause: 'type-too-early',
      prior: kindPriors.unsaid,
      told: false,
      within: within((type) => needOf(type) < needH),
      change,
    },
    {
      cause: late,
      prior: kindPriors.unsaid,
      told: false,
      within: within((type) => needOf(type) > needH),
      change,
    },
  ];
}

function longestPhotoperiodH(site: Site): number {
  return site.dayTable(2027).photoperiodH.reduce((a, b) => Math.max(a, b), 0);
}

/** Between a bed that can be worked and days that turn them to bulbs, plants have no time to grow, or time enough, days (memory). */
const growingTime = [20, 60] as const;

/** How far days turn a kind to bulbs before a plant of spring could have grown, 0…1; 0 where beds can be worked all winter. */
function noTimeFor(site: Site, needH: number): number {
  const { firstDay, photoperiodH } = site.dayTable(2027);
  const workable = springDay(site);
  if (workable === null) return 0;
  const shortest = shortestDay(site);
  for (let day = shortest; day < shortest + climateYearDays; day++)
    if (photoperiodH[day - firstDay] > needH) return ramp(day - workable, growingTime[1], growingTime[0]);
  return 0;
}
