import type { DayNumber } from '../calendar/index.ts';
import type { Site, StartTrial, StartWindow, WhenAnswer } from '../season/index.ts';
import { planDefaults, startedOn, summarise } from '../season/index.ts';
import { bestStretch, middleOf } from './best-stretch.ts';
import type { GrowingOptions } from './growing-options.ts';
import { harvestOf } from './harvest.ts';
import { inTimeRule } from './in-time.ts';
import { once } from './once.ts';
import { scanStarts } from './start-scan.ts';
import type { Way } from './ways.ts';
import { weekOf, weekStarts } from './week-starts.ts';
import { closedUp, type WeekRun, weekRuns, weeksOf } from './windows.ts';
import { hindranceOn } from './workable.ts';
import { worth } from './worth.ts';

/**
 * Tries an onion at the 52 week starts of a year, each at the next day from `today` on that it comes round, and finds the
 * windows in which a start is in time: those that end well often enough, where nothing keeps people from it.
 *
 * @param ways one onion started one way, as it is used through the year; the first stands for days usual for none
 */
export function tryStarts(
  site: Site,
  ways: readonly Way[],
  options: GrowingOptions,
  today: DayNumber,
): WhenAnswer {
  const uses = ways.map(({ isUsual, ...onion }) => {
    const plan = startedOn({ ...planDefaults, ...options, ...onion }, today);
    const scan = scanStarts(site, plan, today, isUsual);
    return { scan, rule: inTimeRule(site, scan) };
  });
  const useOn = (day: DayNumber) => uses.find(({ scan }) => scan.isUsual(day)) ?? uses[0];
  const starts = uses[0].scan.weeks.map((startDay, week): StartTrial => {
    const { plan, runner } = useOn(startDay).scan;
    runner.moveTo(startDay, null);
    const summary = summarise(site, { ...plan, startDay }, runner);
    return { dayOfYear: weekStarts[week], hindrance: hindranceOn(site, plan.start, startDay), summary };
  });
  const isOpen = ({ summary }: StartTrial) =>
    useOn(summary.plan.startDay).rule.isInTime(summary.plan.startDay, harvestOf(site, summary));
  const runs = weekRuns(closedUp(starts.map(isOpen))).filter((run) => {
    const days = weeksOf(run).map((week) => starts[week].summary.plan.startDay);
    return uses.some(({ rule }) => rule.isWindow(days));
  });
  const worths = once(() => starts.map(({ summary }) => worth(site, summary)));
  const best = uses.map(({ scan }) => scan.best()).reduce((a, b) => (b.worth > a.worth ? b : a));
  const bestWeek = weekOf(best.summary.plan.startDay);
  const windows = runs.map((run): StartWindow => {
    const weeks = weeksOf(run);
    const week = weeks.includes(bestWeek) ? bestWeek : bestOfRun(run, worths());
    return { from: weekStarts[run.first], to: weekStarts[run.last], best: weekStarts[week] };
  });
  const { outcome, reason } = starts[bestWeek].summary;
  const code = windows.length > 0 ? 'window' : (`no-window-${outcome}` as const);
  return { starts, windows, best: weekStarts[bestWeek], reason: { code, values: reason.values } };
}

/** The middle of those weeks of a run that are as good as its best. */
function bestOfRun(run: WeekRun, worths: readonly number[]): number {
  const weeks = weeksOf(run);
  const worthAt = (week: number) => (weeks.includes(week) ? worths[week] : Number.NEGATIVE_INFINITY);
  const top = weeks.reduce((a, b) => (worths[b] > worths[a] ? b : a));
  return middleOf(bestStretch(top, worths.length, worthAt), worths.length);
}
