import { civilDate, type DayNumber, dayNumber } from '../calendar/index.ts';
import { surveyOf } from '../choice/index.ts';
import { type Plan, plantOutDayOf, type Site, startedOn } from '../season/index.ts';
import type { WhyAnswer } from './answer.ts';
import type { Cause } from './causes.ts';
import { asLearnt } from './other-weather.ts';
import { type Trial, type Tried, tryTrial } from './season-facts.ts';
import type { RunFound, Weighed } from './weigh.ts';
import type { Change, GrownSo } from './what-if.ts';

/** Changes that a plan can carry. */
const planChanges = new Set<Change['code']>([
  'other-kind',
  'usual-kind',
  'usual-day',
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
/**
 * Good in fewer seasons than this, a plan gives way to the best that the place has, where that brings so many more; sooner
 * where no cause leads.
 */
const hopeful = { share: 0.5, gain: worthMoving } as const;
const hopefulAnyway = { share: 0.9, gain: 0.1 } as const;

/** The plan of the year to come, after `today`, with what the leading cause asks for. */
export function nextYear(
  leading: Cause | null,
  { asTold, runs }: Pick<Weighed, 'asTold' | 'runs'>,
  today: DayNumber,
): WhyAnswer['nextYear'] {
  const of = (found: RunFound | undefined) =>
    found && planChanges.has(found.change.code) ? { tried: found.without, change: found.change } : null;
  const moved = of(runs.get('started-too-late'));
  const gain = (tried: Tried) => tried.grown.goodShare - asTold.grown.goodShare;
  const asked = of(leading === null ? undefined : runs.get(leading));
  const best = asked ?? (moved && gain(moved.tried) >= worthMoving ? moved : null);
  const next = nextTime((best?.tried ?? asTold).trial, today);
  const { plan, grown } = next;
  const asAsked = { plan, grown, change: best && onNewDays(best.change, plan) };
  const enough = leading === null ? hopefulAnyway : hopeful;
  if (grown.goodShare >= enough.share) return asAsked;
  const other = bestHere(next, today);
  if (other.grown.goodShare < grown.goodShare + enough.gain) return asAsked;
  const { type, start, startDay } = other.plan;
  const change: Change = { code: 'other-start', type, start, day: startDay };
  return { plan: other.plan, grown: other.grown, change };
}

type Next = Trial & { grown: GrownSo };

/** The same plan on its days in the next year that it comes round. */
function nextTime(trial: Trial, today: DayNumber): Next {
  const { plan } = trial;
  const startDay = nextOn(plan.startDay, today);
  const out = plantOutDayOf(plan);
  const moved = startedOn(plan, startDay, out === null ? null : out + startDay - plan.startDay);
  return grownSo({ ...trial, site: inUsualWeather(trial.site), plan: moved });
}

/** The best kind, start and day that the place has, as its survey tells. */
function bestHere(trial: Trial, today: DayNumber): Next {
  const { site } = trial;
  const usual = site.reopened({ years: site.weatherYears, record: null });
  return grownSo({ ...trial, site: usual, plan: surveyOf(usual, today).lead().summary.plan });
}

function grownSo(trial: Trial): Next {
  return { ...trial, grown: tryTrial(trial, false).grown };
}

/** Days that came say nothing of a year to come; what was learnt of the plants does. */
function inUsualWeather(site: Site): Site {
  return site.record === null ? site : asLearnt(site, site.reopened({ record: null }));
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
