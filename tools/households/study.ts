import { dayNumber, keepYearOf, openSite } from '../../packages/engine/src/index.ts';
import { live } from './live.ts';
import type { LivedKitchen } from './page.ts';
import type { Kitchen } from './places.ts';

const today = dayNumber(2027, 1, 1);
const planned = { years: 30, seed: 1 };
const livedYears = 102;
/** None of them is the plan's; 2 to 7 were seen when its margin and its number of years were set. */
const livedSeeds = [11, 12, 13];

/** Plans a kitchen on some weather years and lives through others. */
export function livedKitchen(kitchen: Kitchen): LivedKitchen {
  const { climate, kinds, household } = kitchen;
  const plan = keepYearOf(openSite({ climate, ...planned }), kinds, household, today);
  return {
    kitchen,
    plan,
    lived: livedSeeds.map((seed) => live(openSite({ climate, years: livedYears, seed }), plan)),
  };
}
