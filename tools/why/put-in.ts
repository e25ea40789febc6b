import {
  type Cause,
  climateDayOf,
  isAutumnStart,
  type OnionType,
  onionTypes,
  type Plan,
  type PlanForm,
  planDefaults,
  runPlan,
  type Site,
  type StoreAsked,
  type StoreClimate,
  startedOn,
  storeClimateOf,
  warmed,
} from '../../packages/engine/src/index.ts';
import { hoursFromHome } from '../../packages/engine/src/plant/index.ts';
import type { StudyPlace } from './places.ts';

/** A crop with a cause in it, as it was and as its grower tells it. */
export type Spoilt = {
  cause: Cause;
  /** What was lived through, and the same without the cause. */
  lived: { site: Site; plan: Plan; store: StoreAsked | null };
  sound: { site: Site; plan: Plan; store: StoreAsked | null };
  /** What the grower tells. */
  told: Plan;
  said: (keyof PlanForm)[];
  isStoreSaid: boolean;
  store: StoreClimate;
  keepsMonths: readonly [number, number];
};

const keeps: Readonly<Record<OnionType, readonly [number, number]>> = {
  'tropical-short': [2, 3],
  short: [2, 3],
  intermediate: [3, 4],
  'early-long': [4, 6],
  'northern-long': [6, 8],
};

const changed = (plan: Plan, fields: Partial<PlanForm>): Plan => ({ ...plan, ...fields }) as Plan;
const moved = (plan: Plan, days: number): Plan => startedOn(plan, plan.startDay + days, null);

/** Crops that a place grows well, for each way of starting and kind at home: what causes are put into. */
export function soundPlans(place: StudyPlace, year: number): Plan[] {
  const { asked } = place;
  const found: Plan[] = [];
  for (const type of onionTypes) {
    for (const start of ['direct-seed', 'raised-seedlings', 'sets'] as const) {
      let best: { plan: Plan; good: number; mm: number } | null = null;
      for (let week = 0; week < 52; week += 2) {
        const plan = startedOn({ ...planDefaults, type, start }, year + 7 * week);
        const winters = isAutumnStart(plan.startDay, asked.climate.latitudeDeg);
        if (hoursFromHome(type, asked.longestDayH, winters) > 0) continue;
        const { seasonShares, bulbDiameterMm } = runPlan(asked, plan);
        const mm = bulbDiameterMm?.p50 ?? 0;
        if (!best || seasonShares.good + mm / 300 > best.good + best.mm / 300)
          best = { plan, good: seasonShares.good, mm };
      }
      if (best && best.good >= 0.7) found.push(best.plan);
    }
  }
  return found;
}

/** All the ways in which causes are put into a sound crop of a place. */
export function spoiltOf(place: StudyPlace, sound: Plan): Spoilt[] {
  const { lived: site } = place;
  const shed = storeClimateOf(place.climate, 'shed');
  const cellar = storeClimateOf(place.climate, 'cellar');
  const usual = {
    told: sound,
    said: ['type', 'start', 'startDay'] as (keyof PlanForm)[],
    isStoreSaid: true,
    store: shed,
    keepsMonths: keeps[sound.type],
  };
  const grown = (plan: Plan, at: Site = site) => ({ site: at, plan, store: null });
  const spoilt = (cause: Cause, plan: Plan, otherwise: Partial<Spoilt> = {}): Spoilt => ({
    ...usual,
    cause,
    lived: grown(plan),
    sound: grown(sound),
    told: plan,
    ...otherwise,
  });
  const unsaid = (cause: Cause, fields: Partial<PlanForm>): Spoilt =>
    spoilt(cause, changed(sound, fields), { told: sound });
  const others = onionTypes.filter((type) => type !== sound.type);
  const needOf = (type: OnionType) => site.values.types[type].criticalPhotoperiodH;
  const longestH = site.dayTable(2027).photoperiodH.reduce((a, b) => Math.max(a, b), 0);
  const later = others.filter((type) => needOf(type) > needOf(sound.type));
  const earlier = others.filter((type) => needOf(type) < needOf(sound.type));
  const list: Spoilt[] = [];
  for (const type of later) {
    const cause = needOf(type) > longestH - 0.3 ? 'days-too-short' : 'type-too-late';
    list.push(spoilt(cause, changed(sound, { type })));
    list.push(spoilt('wrong-seed', changed(sound, { type }), { told: sound }));
  }
  for (const type of earlier) {
    list.push(spoilt('type-too-early', changed(sound, { type })));
    list.push(spoilt('wrong-seed', changed(sound, { type }), { told: sound }));
  }
  for (const days of [35, 50, 65, 80]) list.push(spoilt('started-too-late', moved(sound, days)));
  if (sound.start !== 'sets')
    for (const days of [-35, -50, -65, -80]) list.push(spoilt('cold-on-large-plants', moved(sound, days)));
  for (const days of [0, 40, 60, 80, 100]) {
    const autumn = moved(sound, days);
    list.push(spoilt('winter-cold', autumn, { sound: grown(autumn, warmer(place, 8)) }));
  }
  if (sound.start === 'sets') {
    const large = changed(sound, { setSizeMm: 26 });
    list.push(spoilt('large-sets', large, { told: large, said: [...usual.said, 'setSizeMm'] }));
    list.push(unsaid('large-sets', { setSizeMm: 26 }));
  }
  list.push(unsaid('thirst', { water: 'rain' }));
  const dry = changed(sound, { water: 'rain' });
  list.push(spoilt('thirst', dry, { said: [...usual.said, 'water'] }));
  const crowded = changed(sound, { densityPerM2: 160 });
  list.push(spoilt('crowding', crowded, { said: [...usual.said, 'densityPerM2'] }));
  const shaded = changed(sound, { sunHours: 4 });
  list.push(spoilt('shade', shaded, { said: [...usual.said, 'sunHours'] }));
  list.push(...stored(sound, place, usual, shed, cellar));
  return list;
}

function warmer({ lived }: StudyPlace, byC: number): Site {
  return lived.reopened({ climate: warmed(lived.climate, byC) });
}

function stored(
  sound: Plan,
  place: StudyPlace,
  usual: Pick<Spoilt, 'told' | 'said' | 'isStoreSaid' | 'store' | 'keepsMonths'>,
  shed: StoreClimate,
  cellar: StoreClimate,
): Spoilt[] {
  const good: StoreAsked = {
    air: { tempC: cellar.tempC.map(() => 3), humidityPct: cellar.humidityPct.map(() => 66) },
    keepsMonths: [6, 8],
    noticed: null,
    thickNecks: [0, 1],
  };
  const at = (store: StoreAsked) => ({ site: place.lived, plan: sound, store });
  const spoilt = (cause: Cause, changed: Partial<StoreAsked>, told: Partial<StoreAsked>): Spoilt => {
    const asTold = { ...good, ...told };
    return {
      ...usual,
      cause,
      lived: at({ ...good, ...changed }),
      sound: at(good),
      store: asTold.air,
      keepsMonths: asTold.keepsMonths,
      isStoreSaid: told.air !== undefined || changed.air === undefined,
    };
  };
  const air = (tempC: number, humidityPct: number): StoreClimate => ({
    tempC: shed.tempC.map(() => tempC),
    humidityPct: shed.humidityPct.map(() => humidityPct),
  });
  const warm = air(18, 60);
  const damp = air(6, 93);
  const frosty: StoreClimate = {
    tempC: shed.tempC.map((_, day) => (climateDayOf(day) % 10 < 3 ? -5 : 2)),
    humidityPct: good.air.humidityPct,
  };
  return [
    spoilt('warm-store', { air: warm }, { air: warm }),
    spoilt('damp-store', { air: damp }, { air: damp }),
    spoilt('frozen-store', { air: frosty }, { air: frosty }),
    spoilt('short-keeper', { keepsMonths: [1, 2] }, { keepsMonths: [1, 2] }),
    spoilt('lifted-unripe', { thickNecks: [0.6, 1] }, {}),
  ];
}
