import type { SeasonSummary } from '@neckfall/engine';
import type { StandOn } from '../facts/index.ts';

/** What the week asks of a grower. */
export type WeekCode =
  | 'far'
  | 'prepare'
  | 'start'
  | 'wait'
  | 'tray'
  | 'harden'
  | 'winter'
  | 'grow'
  | 'feed'
  | 'bulb'
  | 'dry'
  | 'lift'
  | 'cure'
  | 'green'
  | 'pull'
  | 'lost'
  | 'over';

/** Days; common practice where no source is named. */
const days = {
  prepareFrom: 21,
  startAround: 3,
  /** Hardening off takes 7–10 days (Iowa State Extension). */
  hardenFrom: 10,
  /** Nitrogen ends as bulbs begin (Utah State University Extension, seen second-hand). */
  lastFeedFrom: 28,
  /** Water ends when tops begin to fall, or 1–3 weeks before lifting (memory: several extensions). */
  dryFrom: 10,
  liftUntil: 14,
  /** Bulbs dry off in 2–4 weeks (Kansas extension). */
  cureUntil: 42,
  /** No crop without an end of its own stands longer than this. */
  longestGreen: 300,
} as const;

/** Below this onions hardly grow, °C (memory). */
const restingBelowC = 5;

/** What this week asks of a crop whose dates are those of its middle year. */
export function weekOf(
  summary: SeasonSummary,
  stand: Pick<StandOn, 'day' | 'lostShare' | 'tempMeanC'>,
): WeekCode {
  const { plan, emergence, plantOut, onset, neckFall } = summary;
  const { day: today } = stand;
  const until = plan.startDay - today;
  if (until > days.prepareFrom) return 'far';
  if (until > days.startAround) return 'prepare';
  if (until >= -days.startAround) return 'start';
  const since = (day: number | null | undefined) => (day == null ? Number.NEGATIVE_INFINITY : today - day);
  const fallen = since(neckFall.p50);
  if (fallen >= 0) return fallen < days.liftUntil ? 'lift' : fallen < days.cureUntil ? 'cure' : 'over';
  if (stand.lostShare > 0.5) return 'lost';
  if (-until > days.longestGreen && neckFall.p50 === null) return 'over';
  if (plantOut?.p50 != null && since(plantOut.p50) < days.startAround) {
    return since(plantOut.p50) < -days.hardenFrom ? 'tray' : 'harden';
  }
  if (!plantOut && since(emergence.p50) < 0) return 'wait';
  if (neckFall.p50 !== null && fallen >= -days.dryFrom) return 'dry';
  if (since(onset.p50) >= 0) return neckFall.p50 === null ? 'pull' : 'bulb';
  if (stand.tempMeanC !== null && stand.tempMeanC < restingBelowC) return 'winter';
  if (onset.p50 === null) return 'green';
  return since(onset.p50) >= -days.lastFeedFrom ? 'feed' : 'grow';
}
