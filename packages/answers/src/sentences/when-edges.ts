import type { CommonYearDay, StartTrial, StartWindow, WhenAnswer } from '@neckfall/engine';
import type { Speaker } from '@neckfall/words';
import { runsAround } from '../facts/index.ts';

/** What becomes of starts just before and just after a window; null where all weeks are good. */
export type WindowEdges = { earlier: string; later: string } | null;

/** Starts this near to a window are told of, weeks: what a grower may slip into. */
const nearWeeks = 8;

/** What goes wrong with starts earlier and later than a window, in sentences with their reasons. */
export function windowEdges({ starts }: WhenAnswer, window: StartWindow, speaker: Speaker): WindowEdges {
  const runs = runsAround(starts);
  const at = (dayOfYear: CommonYearDay) =>
    runs.findIndex((run) => run.some((trial) => trial.dayOfYear === dayOfYear));
  const before = runs[(at(window.from) + runs.length - 1) % runs.length];
  const after = runs[(at(window.to) + 1) % runs.length];
  if (runs.length < 2) return null;
  return {
    earlier: edgeSentence('earlier', before.slice(-nearWeeks), window, speaker),
    later: edgeSentence('later', after.slice(0, nearWeeks), window, speaker),
  };
}

function edgeSentence(
  way: 'earlier' | 'later',
  run: readonly StartTrial[],
  { from, to }: StartWindow,
  { say, dayOfYear, years, reason }: Speaker,
): string {
  const { hindrance, summary } = run[0];
  const date = dayOfYear(way === 'earlier' ? from : to);
  if (hindrance !== null) return say('when.edge-hindered', { way, date, what: say(`when.${hindrance}`) });
  const { outcome, gamble, years: tried } = summary;
  const worst = run.reduce((a, b) =>
    b.summary.seasonShares[outcome] > a.summary.seasonShares[outcome] ? b : a,
  );
  return say('when.edge', {
    way,
    date,
    what: say(gamble ? 'when.edge-gamble' : `verdict.${outcome}`),
    years: years(gamble ? worst.summary.seasonShares.good : worst.summary.seasonShares[outcome], tried),
    reason: reason(worst.summary.reason),
  });
}
