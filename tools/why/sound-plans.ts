import {
  isAutumnStart,
  type OnionType,
  onionTypes,
  type Plan,
  planDefaults,
  runPlan,
  type Site,
  startedOn,
} from '../../packages/engine/src/index.ts';
import { hoursFromHome } from '../../packages/engine/src/plant/index.ts';
import type { StudyPlace } from './places.ts';

const ways = ['direct-seed', 'raised-seedlings', 'sets'] as const;
/** A crop is grown well where so many seasons are good. */
const soundShare = 0.7;
const fortnight = 14;

/** Crops that a place grows well, for each way of starting and kind at home: what causes are put into. */
export function soundPlans({ asked, year }: StudyPlace): Plan[] {
  return onionTypes.flatMap((type) =>
    ways.flatMap((start) => {
      const best = bestPlan(asked, type, start, year, (day) => {
        const winters = isAutumnStart(day, asked.climate.latitudeDeg);
        return hoursFromHome(type, asked.longestDayH, winters) === 0;
      });
      return best && best.good >= soundShare ? [best.plan] : [];
    }),
  );
}

type Tried = { plan: Plan; good: number; mm: number };

/** The best of 26 starts of a year; null where none is tried. */
export function bestPlan(
  site: Site,
  type: OnionType,
  start: Plan['start'],
  year: number,
  isTried: (day: number) => boolean = () => true,
): Tried | null {
  let best: Tried | null = null;
  for (let day = year; day < year + 365; day += fortnight) {
    if (!isTried(day)) continue;
    const plan = startedOn({ ...planDefaults, type, start }, day);
    const { seasonShares, bulbDiameterMm } = runPlan(site, plan);
    const of = { plan, good: seasonShares.good, mm: bulbDiameterMm?.p50 ?? 0 };
    if (!best || worth(of) > worth(best)) best = of;
  }
  return best;
}

/** Good seasons first, then size. */
function worth({ good, mm }: Tried): number {
  return good + mm / 300;
}
