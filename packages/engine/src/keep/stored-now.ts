import { climateDayOf, type DayNumber, parseDay } from '../calendar/index.ts';
import type { Observation } from '../garden/index.ts';
import { type DateSpread, dateSpread, percentiles, type Spread } from '../season/index.ts';
import { type Brought, broughtIn, isStoreLook, type Noted } from './brought-in.ts';
import { keepingCurve, keptDays, lastsDay, type StoredLot } from './keeping.ts';
import { learnStore, type StoreCheck } from './learn-store.ts';
import type { StoreClimate } from './store-climate.ts';
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

/** A planting whose bulbs are out of the ground. */
export type StoredPlanting = {
  plantingId: string;
  /** Its thick necks hold where none were counted. */
  lot: StoredLot;
  store: StoreClimate;
  /** Used where no observation says so; null: not known. */
  liftedOn: DayNumber | null;
};

const soonDays = 30;

/** What is left of a planting in store; null before it is lifted and where no day of lifting is known. */
export function storedNow(
  { plantingId, lot: usual, store, liftedOn }: StoredPlanting,
  observations: readonly Observation[],
  today: DayNumber,
  { seasons, seed }: { seasons: number; seed: number },
): StoredNow | null {
  const own = observations
    .filter((of) => of.plantingId === plantingId)
    .map((of) => ({ ...of, day: parseDay(of.date) as DayNumber }))
    .filter(({ day }) => day <= today)
    .sort((a, b) => a.day - b.day);
  const lifted = own.find((of) => of.lifted)?.day ?? liftedOn;
  if (lifted === null || lifted > today) return null;
  const brought = broughtIn(own, lifted);
  const lot = { ...usual, thickNeckShare: brought.thickNeckShare ?? usual.thickNeckShare };
  const checks = checksOf(own, lifted, brought);
  const liftedAt = climateDayOf(lifted);
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
    plantingId,
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

/**
 * Looks since lifting. What is not noted of sprouted or rotten was not found; where sound ones were not counted, they are
 * what is left of those last known.
 */
function checksOf(own: readonly Noted[], lifted: DayNumber, brought: Brought): StoreCheck[] {
  let left = brought.bulbs;
  const looks = own.filter((of) => isStoreLook(of) && of.day > lifted && of.day < lifted + keptDays);
  return looks.map(({ day, soundCount, sproutedCount = 0, rottenCount = 0, weighedKg, bulbCount }) => {
    const rest = left === null ? null : left - sproutedCount - rottenCount;
    // more bad ones than were left: the number was another
    left = soundCount ?? (rest !== null && rest >= 0 ? rest : null);
    return {
      day: day - lifted,
      sound: left,
      isSoundCounted: soundCount !== undefined,
      sprouted: sproutedCount,
      rotten: rottenCount,
      massShare:
        weighedKg && bulbCount && brought.kg !== null && brought.bulbs !== null
          ? weighedKg / bulbCount / (brought.kg / brought.bulbs)
          : null,
    };
  });
}
