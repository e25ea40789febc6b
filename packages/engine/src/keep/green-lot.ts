import { plantsPerM2, type Spacing } from '../bed/index.ts';
import type { DayNumber } from '../calendar/index.ts';
import { hindranceOn, typeForClass } from '../choice/index.ts';
import { classOfType } from '../plant/index.ts';
import { type Plan, runPlan, type Site, startedOn } from '../season/index.ts';
import type { Household } from './household.ts';
import type { KeepLot, KitchenKind } from './keep-year.ts';
import type { LotStart } from './lot-starts.ts';
import type { GrownStart } from './lot-survey.ts';
import { startNeedOf } from './start-need.ts';

/** Onions set or sown are pulled green so many days after (University of Illinois Extension: 28–42 from sets). */
export const greenDays = { from: 28, best: 35, to: 42 } as const;
/** A bunch a week for a month (our choice), ... */
const bunches = 4;
const pulledOverDays = 28;
/** ... of so many plants for so many people (common practice, no source), ... */
const bunchPlants = 8;
const bunchFeeds = 4;
/** ... 25 mm apart in rows of 250 mm (University of Illinois Extension; usual rows). */
export const greenSpacing: Spacing = { rowCm: 25, plantCm: 2.5, perStation: 1 };
const greenPerM2 = plantsPerM2(greenSpacing);
const bedStepM2 = 0.05;

/** A little bed pulled green, outside what the kitchen needs of bulbs; null where nothing can be set or sown. */
export function greenLot(
  site: Site,
  household: Household,
  kinds: readonly KitchenKind[],
  grown: readonly GrownStart[],
  today: DayNumber,
): KeepLot | null {
  const sown = grown
    .map(({ start }) => start)
    .filter(({ plan }) => plan.start === 'sets' || plan.start === 'direct-seed')
    // sets first: they are quicker, and come up where seed fails; of these what grows well here, as shops have it
    .sort((a, b) => rank(b) - rank(a));
  for (const { plan } of sown) {
    const kind = kinds.find(({ type, start }) => type === plan.type && start === plan.start);
    const day = firstWorkable(site, plan, today);
    if (!kind || day === null) continue;
    // by then packets of the class may hold another type
    if (typeForClass(site, classOfType[plan.type], plan.start, day) !== plan.type) continue;
    const green = startedOn({ ...plan, densityPerM2: greenPerM2 }, day);
    const summary = runPlan(site, green);
    const pulled = (bunches * bunchPlants * household.people) / bunchFeeds;
    const plants = pulled / (summary.emergedShare || 1);
    const bedM2 = bedStepM2 * Math.max(1, Math.ceil(plants / greenPerM2 / bedStepM2));
    const spread = (days: number) => ({
      share: 1,
      days: {
        p10: day + greenDays.from + days,
        p50: day + greenDays.best + days,
        p90: day + greenDays.to + days,
      },
    });
    return {
      kind,
      plan: summary.plan,
      summary,
      likes: ['green'],
      bedM2,
      need: startNeedOf(summary, bedM2, household.seedAge),
      ready: spread(0),
      lastsUntil: spread(pulledOverDays),
    };
  }
  return null;
}

const rank = ({ plan, isGood }: LotStart) => 2 * Number(plan.start === 'sets') + Number(isGood);

/** The first day from today on when a bed can be worked, within a year. */
function firstWorkable(site: Site, plan: Plan, today: DayNumber): DayNumber | null {
  for (let day = today; day < today + 365; day++)
    if (hindranceOn(site, plan.start, day) === null && hindranceOn(site, plan.start, day + 14) === null)
      return day;
  return null;
}
