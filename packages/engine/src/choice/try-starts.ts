import type { Plan, Reason, Site, StartTrial, StartWindow, WhenAnswer } from '../season/index.ts';
import { runnerOf, summarise } from '../season/index.ts';
import { bestStretch, middleOf } from './best-stretch.ts';
import { harvestOf } from './harvest.ts';
import { inTimeRule } from './in-time.ts';
import type { ClassUse } from './type-for-class.ts';
import { dayInYear, weekStarts } from './week-starts.ts';
import { closedUp, weekRuns, weeksOf } from './windows.ts';
import { worth } from './worth.ts';

/** A plan whose start day is still open. */
export type OpenPlan = Omit<Plan, 'startDay' | 'plantOutDay'>;

/**
 * Tries a plan at the 52 week starts of a year and finds the windows in which a start is in time: those that end well
 * often enough, where the bed can be worked.
 *
 * @param uses what a packet of the class holds, by the day of the start; by default the plan's own type all year
 */
export function tryStarts(
  site: Site,
  plan: OpenPlan,
  year: number,
  uses: readonly ClassUse[] = [{ type: plan.type, isUsual: () => true }],
): WhenAnswer {
  const firstDay = dayInYear(year, 1);
  const kinds = uses.map(({ type, isUsual }) => {
    const kind = { ...plan, type, startDay: firstDay, plantOutDay: null };
    return { kind, isUsual, runner: runnerOf(site, kind), rule: inTimeRule(site, kind, isUsual) };
  });
  const kindOn = (day: number) => kinds.find(({ isUsual }) => isUsual(day)) ?? kinds[0];
  const starts: StartTrial[] = weekStarts.map((dayOfYear) => {
    const startDay = dayInYear(year, dayOfYear);
    const { kind, runner } = kindOn(startDay);
    runner.moveTo(startDay, null);
    return { dayOfYear, summary: summarise(site, { ...kind, startDay }, runner) };
  });
  const isOpen = ({ summary }: StartTrial) =>
    kindOn(summary.plan.startDay).rule.isInTime(summary.plan.startDay, harvestOf(site, summary));
  const runs = weekRuns(closedUp(starts.map(isOpen))).filter((run) => {
    const days = weeksOf(run).map((week) => starts[week].summary.plan.startDay);
    return kinds.some(({ rule }) => rule.isWindow(days));
  });
  const windows = runs.map((run): StartWindow => {
    const weeks = weeksOf(run);
    const worthAt = (week: number) =>
      weeks.includes(week) ? worth(site, starts[week].summary) : Number.NEGATIVE_INFINITY;
    const best = weeks.reduce((a, b) => (worthAt(b) > worthAt(a) ? b : a));
    const middle = middleOf(bestStretch(best, starts.length, worthAt), starts.length);
    return {
      from: starts[run.first].dayOfYear,
      to: starts[run.last].dayOfYear,
      best: starts[middle].dayOfYear,
    };
  });
  return { starts, windows, reason: windowReason(site, starts, windows) };
}

function windowReason(site: Site, starts: StartTrial[], windows: StartWindow[]): Reason {
  const best = starts.reduce((a, b) => (worth(site, b.summary) > worth(site, a.summary) ? b : a)).summary;
  if (windows.length > 0) return { code: 'window', values: best.reason.values };
  return { code: `no-window-${best.outcome}`, values: best.reason.values };
}
