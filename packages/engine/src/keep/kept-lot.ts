import { climateDayOf, type DayNumber, parseDay } from '../calendar/index.ts';
import type { Observation } from '../garden/index.ts';
import { type Brought, broughtIn, isStoreLook, type Noted } from './brought-in.ts';
import { keptDays, type StoredLot } from './keeping.ts';
import type { StoreCheck } from './learn-store.ts';
import type { StoreClimate } from './store-climate.ts';
import type { LookedAt } from './store-taught.ts';

/** A planting whose bulbs are out of the ground. */
export type StoredPlanting = {
  plantingId: string;
  /** Its thick necks hold where none were counted. */
  lot: StoredLot;
  store: StoreClimate;
  /** Used where no observation says so; null: not known. */
  liftedOn: DayNumber | null;
};

/** A planting out of the ground, with what was noted of it until a day, in the order of days. */
export type KeptLot = {
  lifted: DayNumber;
  own: readonly Noted[];
  brought: Brought;
  looked: LookedAt;
};

/** What was noted of a planting in store; null before it is lifted and where no day of lifting is known. */
export function keptLotOf(
  { plantingId, lot: usual, store, liftedOn }: StoredPlanting,
  observations: readonly Observation[],
  today: DayNumber,
): KeptLot | null {
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
  return { lifted, own, brought, looked: { lot, store, liftedOn: climateDayOf(lifted), checks } };
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
