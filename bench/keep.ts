import { kitchenKindsOf } from '../packages/answers/src/index.ts';
import { cultivars } from '../packages/data/src/index.ts';
import { type Household, keepYearOf, type MonthlyClimate, openSite } from '../packages/engine/src/index.ts';
import { medianMs, type Row } from './timing.ts';

const household: Household = {
  people: 4,
  gramsPerWeek: 700,
  store: 'cellar',
  likes: ['keeper', 'red', 'green'],
  seedAge: null,
};
/** Promised of a household whose place is at hand, ms. */
const householdMs = 300;

/** A kitchen's year where all that grows has been tried, as after a change of the household, and where nothing has. */
export function keepRows(climate: MonthlyClimate, years: number, today: number): Row[] {
  const open = () => openSite({ climate, years, seed: 1 });
  const kinds = kitchenKindsOf(cultivars, null);
  const site = open();
  const row = (what: string, value: number, limit: number | null): Row => ({
    what,
    value,
    unit: 'ms',
    limit,
  });
  return [
    row(
      'keep, a household, place at hand',
      medianMs(5, () => keepYearOf(site, kinds, household, today)),
      householdMs,
    ),
    row(
      'keep, a household, new place',
      medianMs(3, () => keepYearOf(open(), kinds, household, today)),
      null,
    ),
  ];
}
