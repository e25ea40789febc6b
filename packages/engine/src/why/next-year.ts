import { civilDate, type DayNumber, dayNumber } from '../calendar/index.ts';
import { type Plan, plantOutDayOf, startedOn } from '../season/index.ts';
import type { WhyAnswer } from './answer.ts';
import type { Cause } from './causes.ts';
import { type Tried, tryTrial } from './season-facts.ts';
import type { RunFound, Weighed } from './weigh.ts';
import type { Change } from './what-if.ts';

/** Changes that a plan can carry. */
const planChanges = new Set<Change['code']>([
  'other-kind',
  'earlier',
  'later',
  'smaller-sets',
  'warm-stored-sets',
  'watered',
  'wider',
  'in-sun',
  'covered',
]);

/** Another start is worth changing a crop for that another cause spoilt if it brings so many more good years, 0…1. */
const worthMoving = 0.2;

/** The plan of the year to come, after `today`, with what the leading cause asks for. */
export function nextYear(
  leading: Cause | null,
  { asTold, runs }: Weighed,
  today: DayNumber,
): WhyAnswer['nextYear'] {
  const of = (found: RunFound | undefined) =>
    found && planChanges.has(found.change.code) ? { tried: found.without, change: found.change } : null;
  const moved = of(runs.get('started-too-late'));
  const isWorthIt = moved !== null && moved.tried.grown.goodShare >= asTold.grown.goodShare + worthMoving;
  const best = of(leading === null ? undefined : runs.get(leading)) ?? (isWorthIt ? moved : null);
  const { tried, change } = best ?? { tried: asTold, change: null };
  const { plan, grown } = nextTime(tried, today);
  return { plan, change: change && onNewDays(change, plan), grown };
}

/** The same plan on its days in the next year that it comes round. */
function nextTime({ trial }: Tried, today: DayNumber): { plan: Plan; grown: Tried['grown'] } {
  const { plan } = trial;
  const startDay = nextOn(plan.startDay, today);
  const out = plantOutDayOf(plan);
  const moved = startedOn(plan, startDay, out === null ? null : out + startDay - plan.startDay);
  // days that came say nothing of a year to come
  const site = trial.site.record === null ? trial.site : trial.site.reopened({ record: null });
  return { plan: moved, grown: tryTrial({ ...trial, site, plan: moved }, false).grown };
}

function nextOn(day: DayNumber, today: DayNumber): DayNumber {
  const { month, day: of } = civilDate(day);
  const monthDay = month === 2 && of === 29 ? 28 : of;
  const from = civilDate(Math.max(day, today)).year;
  const inYear = (year: number) => dayNumber(year, month, monthDay);
  const first = inYear(from);
  return first > today && first > day ? first : inYear(from + 1);
}

function onNewDays(change: Change, { startDay }: Plan): Change {
  return 'day' in change ? { ...change, day: startDay } : change;
}
