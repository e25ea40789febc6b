import { civilDate, dayOfYear } from '../calendar/index.ts';
import { classOfType, type StartMethod } from '../plant/index.ts';
import { planDefaults, referenceBulbG, type Site, summarise, type TodayAnswer } from '../season/index.ts';
import { harvester } from './harvest.ts';
import { inTimeRule } from './in-time.ts';
import { reach } from './reach.ts';
import { isNearGood, type StartScan, scanStarts } from './start-scan.ts';
import type { OpenPlan } from './try-starts.ts';
import { dayInYear, weekStarts } from './week-starts.ts';
import { hindranceOn } from './workable.ts';

/** What is common to all plans of a survey. */
export type SurveyOptions = Partial<Omit<OpenPlan, 'type' | 'start'>>;

/** What one way of starting one onion is still worth today. */
export function startToday(
  site: Site,
  onion: Pick<OpenPlan, 'type' | 'traits'>,
  start: StartMethod,
  today: number,
  options: SurveyOptions = {},
  isUsual: (startDay: number) => boolean = () => true,
): TodayAnswer {
  const plan = { ...planDefaults, ...options, ...onion, start, startDay: today, plantOutDay: null };
  return todayOf(site, scanStarts(site, plan, weekOf(today), isUsual), today);
}

/** First day of the week of starts that a day lies in. */
function weekOf(day: number): number {
  const { year } = civilDate(day);
  const week = Math.min(weekStarts.length - 1, Math.floor((dayOfYear(day) - 1) / 7));
  return dayInYear(year, weekStarts[week]);
}

/**
 * The same from a scan of the year from this week on, by the weeks and the rule of the windows of `tryStarts`. Weeks
 * are tried where the mean climate is good or next to it.
 */
function todayOf(site: Site, { plan, runner, weeks, mean, isUsual }: StartScan, today: number): TodayAnswer {
  const harvest = harvester(site, plan, runner, referenceBulbG(site, plan));
  const { isInTime, isWindow } = inTimeRule(site, { ...plan, startDay: today }, isUsual);
  const known = new Map<number, boolean>();
  const isOpen = (week: number) => {
    const startDay = weeks[week];
    if (startDay === undefined || !isUsual(startDay) || hindranceOn(site, plan.start, startDay) !== null)
      return false;
    let found = known.get(week);
    if (found === undefined) {
      runner.moveTo(startDay, null);
      found = isInTime(startDay, harvest());
      known.set(week, found);
    }
    return found;
  };
  const count = weeks.length;
  const isOpenAt = (week: number) => isOpen((week + count) % count);
  /** The window about an open week, in weeks from this one on; null where it is chance. */
  const windowAt = (week: number) => {
    const after = reach(count - 1, (far) => isOpenAt(week + far));
    const before = reach(count - 1 - after, (far) => isOpenAt(week - far));
    const days = Array.from(
      { length: before + after + 1 },
      (_, at) => weeks[(week - before + at + count) % count],
    );
    return isWindow(days) ? { from: week - before, to: week + after } : null;
  };
  // a week alone that falls short closes no window
  const now = isOpen(0) || (isOpen(1) && isOpen(count - 1)) ? windowAt(0) : null;
  runner.moveTo(today, null);
  const answer = {
    start: plan.start,
    class: classOfType[plan.type],
    type: plan.type,
    verdict: now ? ('good' as const) : summarise(site, plan, runner).outcome,
  };
  if (now) {
    const until = weeks[Math.min(now.to, count - 1)];
    return { ...answer, stillGoodUntil: Math.max(today, until), nextFrom: null };
  }
  for (const [at, { startDay }] of mean.entries()) {
    const week = weeks.indexOf(startDay);
    if (week === 0 || !isNearGood(mean, at) || !isOpen(week)) continue;
    const next = windowAt(week);
    if (next) return { ...answer, stillGoodUntil: null, nextFrom: weeks[Math.max(1, next.from)] };
  }
  return { ...answer, stillGoodUntil: null, nextFrom: null };
}
