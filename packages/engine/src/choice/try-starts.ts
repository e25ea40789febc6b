import type { Plan, Site, StartTrial, StartWindow, WhenAnswer } from '../season/index.ts';
import { runnerOf, summarise } from '../season/index.ts';
import { bestStretch, middleOf } from './best-stretch.ts';
import { harvestOf } from './harvest.ts';
import { inTimeRule } from './in-time.ts';
import type { ClassUse } from './type-for-class.ts';
import { dayInYear, weekStarts } from './week-starts.ts';
import { closedUp, weekRuns, weeksOf } from './windows.ts';
import { hindranceOn } from './workable.ts';
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
    const summary = summarise(site, { ...kind, startDay }, runner);
    return { dayOfYear, hindrance: hindranceOn(site, plan.start, startDay), summary };
  });
  const isOpen = ({ summary }: StartTrial) =>
    kindOn(summary.plan.startDay).rule.isInTime(summary.plan.startDay, harvestOf(site, summary));
  const runs = weekRuns(closedUp(starts.map(isOpen))).filter((run) => {
    const days = weeksOf(run).map((week) => starts[week].summary.plan.startDay);
    return kinds.some(({ rule }) => rule.isWindow(days));
  });
  const worths = starts.map(({ summary }) => worth(site, summary));
  const stretches = runs.map((run) => {
    const weeks = weeksOf(run);
    const worthAt = (week: number) => (weeks.includes(week) ? worths[week] : Number.NEGATIVE_INFINITY);
    const top = dearest(weeks, worths);
    return { run, top, best: middleOf(bestStretch(top, starts.length, worthAt), starts.length) };
  });
  const windows = stretches.map(
    ({ run, best }): StartWindow => ({
      from: starts[run.first].dayOfYear,
      to: starts[run.last].dayOfYear,
      best: starts[best].dayOfYear,
    }),
  );
  const lead =
    stretches.length > 0
      ? stretches.reduce((a, b) => (worths[b.top] > worths[a.top] ? b : a)).best
      : dearest([...starts.keys()], worths);
  const { outcome, reason } = starts[lead].summary;
  const code = windows.length > 0 ? 'window' : (`no-window-${outcome}` as const);
  return { starts, windows, best: starts[lead].dayOfYear, reason: { code, values: reason.values } };
}

function dearest(weeks: readonly number[], worths: readonly number[]): number {
  return weeks.reduce((a, b) => (worths[b] > worths[a] ? b : a));
}
