import type { DayNumber } from '../calendar/index.ts';
import type { Observation } from '../garden/index.ts';
import { type DateSpread, dateSpread, percentiles, type Spread } from '../season/index.ts';
import { isStoreLook } from './brought-in.ts';
import { keepingCurve, keptDays, lastsDay } from './keeping.ts';
import { keptLotOf, type StoredPlanting } from './kept-lot.ts';
import { learnStore } from './learn-store.ts';
import { storeLooks } from './store-looks.ts';

/** What a planting has in store on a day. */
export type StoredNow = {
  plantingId: string;
  liftedOn: DayNumber;
  /** Sound bulbs, kg; null where none was weighed or counted. */
  soundKg: Spread | null;
  soundBulbs: Spread | null;
  /** Of the bulbs lifted, on the day asked. */
  soundShare: Spread;
  /** Until fewer than half of the bulbs lifted are sound, eaten from or not. */
  lastsUntil: DateSpread;
  /** Of them within the next 30 days, share of those sound today. */
  lostNextShare: number;
  /** Of the bulbs brought in, as counted, else the usual. */
  thickNeckShare: number;
  /** The first look that is not done, today or later; null where none is left. */
  nextLook: DayNumber | null;
  checks: number;
};

const soonDays = 30;

/** What is left of a planting in store; null before it is lifted and where no day of lifting is known. */
export function storedNow(
  planting: StoredPlanting,
  observations: readonly Observation[],
  today: DayNumber,
  { seasons, seed }: { seasons: number; seed: number },
): StoredNow | null {
  const kept = keptLotOf(planting, observations, today);
  if (kept === null) return null;
  const { lifted, own, brought } = kept;
  const { lot, store, liftedOn: liftedAt, checks } = kept.looked;
  const at = Math.min(keptDays - 1, today - lifted);
  const last = checks.findLast(({ sound }) => sound !== null);
  const curves = learnStore(lot, store, liftedAt, checks, seasons, seed).map((draw) =>
    keepingCurve(lot, store, liftedAt, draw),
  );
  const bulbs = curves.map(({ sound }) =>
    last?.sound != null
      ? (last.sound * sound[at]) / Math.max(1e-9, sound[last.day])
      : (brought.bulbs ?? 0) * sound[at],
  );
  // what was eaten is known from the looks alone
  const kg = curves.map(({ sound, massShare }, draw) =>
    brought.bulbs !== null && brought.kg !== null
      ? bulbs[draw] * (brought.kg / brought.bulbs) * massShare[at]
      : (brought.kg ?? 0) * sound[at] * massShare[at],
  );
  const over = curves.map(lastsDay).filter((day) => day < keptDays);
  const looked = own.filter(isStoreLook).map(({ day }) => day - lifted);
  const nextLook = storeLooks(lot, store, liftedAt, looked).looks.find(
    ({ after, isDone }) => !isDone && lifted + after >= today,
  );
  const soon = Math.min(keptDays - 1, at + soonDays);
  return {
    plantingId: planting.plantingId,
    liftedOn: lifted,
    soundKg: brought.kg === null ? null : percentiles(kg),
    soundBulbs: last || brought.bulbs !== null ? percentiles(bulbs) : null,
    soundShare: percentiles(curves.map(({ sound }) => sound[at])),
    lastsUntil: dateSpread(over, lifted, seasons),
    lostNextShare: percentiles(curves.map(({ sound }) => (sound[at] > 0 ? 1 - sound[soon] / sound[at] : 1)))
      .p50,
    thickNeckShare: lot.thickNeckShare,
    nextLook: nextLook === undefined ? null : lifted + nextLook.after,
    checks: checks.length,
  };
}
