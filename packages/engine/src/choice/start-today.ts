import { civilDate, type DayNumber } from '../calendar/index.ts';
import { classOfType } from '../plant/index.ts';
import { referenceBulbG, type Site, summarise, type TodayAnswer } from '../season/index.ts';
import { harvester } from './harvest.ts';
import { inTimeRule } from './in-time.ts';
import { reach } from './reach.ts';
import { isNearGood, type StartScan } from './start-scan.ts';
import { dayInYear, weekOf, weekStarts } from './week-starts.ts';
import { hindranceOn } from './workable.ts';

/**
 * What one way of starting one onion is still worth today, by the weeks and the rule of the windows of `tryStarts`.
 * Weeks are tried where the mean climate is good or next to it.
 */
export function startToday(site: Site, scan: StartScan, today: DayNumber): TodayAnswer {
  const { plan, runner, mean, isUsual } = scan;
  const harvest = harvester(site, plan, runner, referenceBulbG(site, plan));
  const { isInTime, isWindow } = inTimeRule(site, scan);
  const count = weekStarts.length;
  const thisWeek = weekOf(today);
  // of the week that today lies in, a record knows this year's start; else the next to come tells the same
  const began = dayInYear(civilDate(today).year, weekStarts[thisWeek]);
  const weeks = scan.weeks.map((day, week) => (site.isDated && week === thisWeek ? began : day));
  const known = new Map<number, boolean>();
  // weeks are counted from this one on, in a year taken as a circle
  const dayAt = (ahead: number) => weeks[(thisWeek + ahead + count) % count];
  const isOpen = (ahead: number) => {
    const startDay = dayAt(ahead % count);
    let found = known.get(startDay);
    if (found === undefined) {
      found = false;
      if (isUsual(startDay) && hindranceOn(site, plan.start, startDay) === null) {
        runner.moveTo(startDay, null);
        found = isInTime(startDay, harvest());
      }
      known.set(startDay, found);
    }
    return found;
  };
  /** The window about an open week, in weeks from this one on; null where it is chance. */
  const windowAt = (ahead: number) => {
    const after = reach(count - 1, (far) => isOpen(ahead + far));
    const before = reach(count - 1 - after, (far) => isOpen(ahead - far));
    const days = Array.from({ length: before + after + 1 }, (_, at) => dayAt((ahead - before + at) % count));
    return isWindow(days) ? { from: ahead - before, to: ahead + after } : null;
  };
  // a week alone that falls short closes no window
  const now = isOpen(0) || (isOpen(1) && isOpen(-1)) ? windowAt(0) : null;
  runner.moveTo(today, null);
  const answer = {
    start: plan.start,
    class: classOfType[plan.type],
    type: plan.type,
    verdict: now ? ('good' as const) : summarise(site, { ...plan, startDay: today }, runner).outcome,
  };
  if (now) {
    const until = now.to > 0 ? Math.max(today, dayAt(Math.min(now.to, count - 1))) : today;
    return { ...answer, stillGoodUntil: until, nextFrom: null };
  }
  for (let ahead = 1; ahead < count; ahead++) {
    const at = mean.findIndex(({ week }) => week === (thisWeek + ahead) % count);
    if (at < 0 || !isNearGood(mean, at) || !isOpen(ahead)) continue;
    const next = windowAt(ahead);
    if (next) return { ...answer, stillGoodUntil: null, nextFrom: dayAt(Math.max(1, next.from)) };
  }
  return { ...answer, stillGoodUntil: null, nextFrom: null };
}
