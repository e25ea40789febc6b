import type { DayNumber } from '../calendar/index.ts';
import type { Like } from '../garden/index.ts';
import { quantileSorted } from '../math/index.ts';
import type { Site } from '../season/index.ts';
import { greenLot } from './green-lot.ts';
import type { Household } from './household.ts';
import type { KeepYear, KitchenKind } from './keep-year.ts';
import { feedablePeriods, type Limits } from './kitchen-gaps.ts';
import { type LotTable, periodDays, tableOf, yearPeriods } from './kitchen-periods.ts';
import { tellingChecks } from './learn-store.ts';
import { mostSearched, worthSearching } from './lot-beaten.ts';
import { kindsForStart } from './lot-kinds.ts';
import { type CandidateLot, candidateLot } from './lot-supply.ts';
import type { GrownStart } from './lot-survey.ts';
import { kitchenYears } from './lot-years.ts';
import { leastAreas } from './solve-areas.ts';
import { storeClimateOf } from './store-climate.ts';
import type { StoreDraw } from './store-draw.ts';
import { type LookedAt, taughtStoreDraws } from './store-taught.ts';
import { tellYear } from './tell-year.ts';

/** A kitchen is to be fed in so many years of the weather to come. */
const askedShare = 0.8;
const mostLots = 4;
/** Beds of so many steps and more are told in steps twice as large (our choice: the search of finer ones takes seconds). */
const fineSteps = 16;
/** Wants that bulbs of a kind answer. */
const bulbLikes: readonly Like[] = ['mild', 'keeper', 'red'];
/** A want is answered with what feeds the kitchen so long, weeks. */
const likeWeeks = 4;
/** Beds are told in steps, each twice the one before so that a larger household never gets the smaller bed. */
const leastStepM2 = 0.05;
const stepWeeks = 4;

export function planKitchen(
  site: Site,
  kinds: readonly KitchenKind[],
  household: Household,
  grown: readonly GrownStart[],
  today: DayNumber,
  looked: readonly LookedAt[],
): KeepYear {
  const wants = bulbLikes.filter((like) => household.likes.includes(like));
  const draws = taughtStoreDraws(looked, kitchenYears, site.seed);
  const all = candidates(site, kinds, household, grown, wants, draws);
  const needKg = ((household.gramsPerWeek / 1000) * periodDays) / 7;
  const bestKgM2 = Math.max(0.1, ...all.map(({ years }) => middle(years.kgM2)));
  const stepM2 = stepFor(bestKgM2, needKg);
  const allTables = all.map(
    (lot): LotTable => ({
      ...tableOf(lot, needKg, bestKgM2),
      likes: bits(lot.kind.likes, wants),
      likeSteps: Math.ceil((likeWeeks * needKg) / middle(lot.years.kgM2) / stepM2),
    }),
  );
  const isKept = worthSearching(allTables);
  const useful = allTables.filter((_, at) => isKept[at]);
  const years = kitchenYears;
  const enoughYears = enoughOf(years);
  const limits = { years, periods: yearPeriods, enoughYears, mostLots, fineSteps };
  const { answered, required, few } = feedable(useful, wants, limits);
  const searched = [...few, ...strongest(useful, few, required)].slice(0, mostSearched);
  const tables = allTables.filter((table) => searched.includes(table));
  const lots = all.filter((_, at) => searched.includes(allTables[at]));
  const steps = leastAreas({ ...limits, lots: tables, required, stepM2, likes: bits(answered, wants) });
  const chosen = lots.flatMap((lot, at) => {
    const more = steps?.[at] ?? 0;
    return more > 0 ? [{ lot, areaM2: round(more * stepM2) }] : [];
  });
  const green = household.likes.includes('green') ? greenLot(site, household, kinds, grown, today) : null;
  const unmetLikes = household.likes.filter((like) =>
    like === 'green' ? green === null : !answered.includes(like),
  );
  const year = tellYear(site, household, chosen, green, { required, enoughYears }, grown, unmetLikes);
  return { ...year, taught: taughtBy(looked, draws) };
}

/** Lots of all starts that are good, in the order in which they are eaten: what keeps shortest goes first, as it ends soonest. */
function candidates(
  site: Site,
  kinds: readonly KitchenKind[],
  household: Household,
  grown: readonly GrownStart[],
  wants: readonly Like[],
  draws: readonly StoreDraw[],
): CandidateLot[] {
  const store = storeClimateOf(site.climate, household.store);
  const lots = grown
    .filter(({ start }) => start.isGood)
    .flatMap(({ start, years }) =>
      kindsForStart(start, kinds, wants).map((kind) => candidateLot(start, kind, years, store, draws)),
    );
  const lasts = new Map(lots.map((lot) => [lot, middle(lot.lastsDays)]));
  const lastsOf = (lot: CandidateLot) => lasts.get(lot) ?? 0;
  return lots.filter((lot) => middle(lot.years.kgM2) > 0).sort((a, b) => lastsOf(a) - lastsOf(b));
}

/**
 * Years of those tried in which a plan has to hold so that it does in the share asked for of others: two standard errors
 * more, since the plan was chosen as the least that holds in these.
 */
function enoughOf(years: number): number {
  const margin = 2 * Math.sqrt((askedShare * (1 - askedShare)) / years);
  return Math.min(years, Math.ceil(years * (askedShare + margin)));
}

/** About what feeds the kitchen for two to four weeks, m², in a round step. */
function stepFor(bestKgM2: number, needKg: number): number {
  const doublings = Math.floor(Math.log2((stepWeeks * needKg) / bestKgM2 / leastStepM2));
  return leastStepM2 * 2 ** Math.max(0, doublings);
}

/** The periods that few lots feed which answer all the wants that can be, of the last ones the fewest given up. */
function feedable(
  tables: readonly LotTable[],
  wants: readonly Like[],
  limits: Limits,
): { answered: readonly Like[]; required: Uint8Array; few: readonly LotTable[] } {
  const answerable = wants.filter((like) => tables.some(({ likes }) => likes & bits([like], wants)));
  for (let count = answerable.length; count > 0; count--) {
    const answered = answerable.slice(0, count);
    const found = feedablePeriods(tables, limits, bits(answered, wants));
    if (found) return { answered, ...found };
  }
  const found = feedablePeriods(tables, limits, 0);
  return { answered: [], ...(found ?? { required: new Uint8Array(limits.periods), few: [] }) };
}

/** The other lots, first those of which a square metre feeds most of what must be fed. */
function strongest(lots: readonly LotTable[], few: readonly LotTable[], required: Uint8Array): LotTable[] {
  const strength = new Map(
    lots.map((lot) => [lot, lot.m2.reduce((sum, m2, i) => sum + required[i % required.length] / m2, 0)]),
  );
  return lots
    .filter((lot) => !few.includes(lot))
    .sort((a, b) => (strength.get(b) ?? 0) - (strength.get(a) ?? 0));
}

function bits(likes: readonly Like[], wants: readonly Like[]): number {
  return wants.reduce((sum, want, at) => sum + (likes.includes(want) ? 2 ** at : 0), 0);
}

function middle(values: ArrayLike<number>): number {
  return quantileSorted(Float64Array.from(values).sort(), 0.5);
}

/** Without what binary fractions add. */
function round(areaM2: number): number {
  return Math.round(areaM2 * 1000) / 1000;
}

/** How the store loses onions against the usual, as looks at it have taught; null where nobody has looked. */
function taughtBy(looked: readonly LookedAt[], draws: readonly StoreDraw[]): KeepYear['taught'] {
  const looks = looked.reduce((sum, { checks }) => sum + tellingChecks(checks).length, 0);
  if (looks === 0) return null;
  return {
    looks,
    sproutingPace: middle(draws.map(({ sprouting }) => sprouting)),
    rottingPace: middle(draws.map(({ rotting }) => rotting)),
  };
}
