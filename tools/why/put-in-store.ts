import {
  type Cause,
  type Plan,
  type StoreAsked,
  type StoreClimate,
  storeClimateOf,
} from '../../packages/engine/src/index.ts';
import type { StudyPlace } from './places.ts';
import { goodStore, type Spoilt, spoiltCrop } from './spoilt.ts';

/** Of ten nights three are frosty in a store that lets frost in, °C. */
const frost = { everyDays: 10, days: 3, tempC: -5, elseC: 2 } as const;

/** Bad stores, a kind that does not keep, and bulbs lifted green. */
export function putInStore(place: StudyPlace, sound: Plan): Spoilt[] {
  const usual = storeClimateOf(place.climate, 'shed');
  const good = goodStore(usual);
  const at = (store: StoreAsked) => ({ site: place.lived, plan: sound, store });
  const spoilt = (cause: Cause, changed: Partial<StoreAsked>): Spoilt => {
    const bad = { ...good, ...changed };
    // that bulbs were lifted green nobody says
    const { air, keepsMonths } = bad;
    const otherwise = { lived: at(bad), sound: at(good), store: air, keepsMonths };
    return spoiltCrop(place, sound, cause, sound, otherwise);
  };
  const steady = (tempC: number, humidityPct: number): StoreClimate => ({
    tempC: usual.tempC.map(() => tempC),
    humidityPct: usual.humidityPct.map(() => humidityPct),
  });
  const frosty: StoreClimate = {
    tempC: usual.tempC.map((_, day) => (day % frost.everyDays < frost.days ? frost.tempC : frost.elseC)),
    humidityPct: good.air.humidityPct,
  };
  return [
    spoilt('warm-store', { air: steady(18, 60) }),
    spoilt('damp-store', { air: steady(6, 93) }),
    spoilt('frozen-store', { air: frosty }),
    spoilt('short-keeper', { keepsMonths: [1, 2] }),
    spoilt('lifted-unripe', { thickNecks: [0.6, 1] }),
  ];
}
