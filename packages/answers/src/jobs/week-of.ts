import type { DateSpread, DayNumber, SeasonSummary } from '@neckfall/engine';
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

/**
 * What this week asks of a crop whose dates are those of its middle year.
 *
 * @param liftedOn the day it was lifted by the grower's own word; null: it stands as far as is known
 */
export function weekOf(
  summary: SeasonSummary,
  stand: Pick<StandOn, 'day' | 'lostShare' | 'tempMeanC'>,
  liftedOn: DayNumber | null = null,
): WeekCode {
  const { plan, emergence, plantOut, onset, neckFall } = summary;
  const { day: today } = stand;
  if (liftedOn !== null && today >= liftedOn) {
    return today - liftedOn < days.cureUntil - days.liftUntil ? 'cure' : 'over';
  }
  const until = plan.startDay - today;
  if (until > days.prepareFrom) return 'far';
  if (until > days.startAround) return 'prepare';
  if (until >= -days.startAround) return 'start';
  const since = (date: DateSpread) => (date.days ? today - date.days.p50 : Number.NEGATIVE_INFINITY);
  const fallen = since(neckFall);
  if (fallen >= 0) return fallen < days.liftUntil ? 'lift' : fallen < days.cureUntil ? 'cure' : 'over';
  if (stand.lostShare > 0.5) return 'lost';
  if (-until > days.longestGreen && !neckFall.days) return 'over';
  if (plantOut?.days && since(plantOut) < days.startAround) {
    return since(plantOut) < -days.hardenFrom ? 'tray' : 'harden';
  }
  if (!plantOut && since(emergence) < 0) return 'wait';
  if (neckFall.days && fallen >= -days.dryFrom) return 'dry';
  if (since(onset) >= 0) return neckFall.days ? 'bulb' : 'pull';
  if (stand.tempMeanC !== null && stand.tempMeanC < restingBelowC) return 'winter';
  if (!onset.days) return 'green';
  return since(onset) >= -days.lastFeedFrom ? 'feed' : 'grow';
}
