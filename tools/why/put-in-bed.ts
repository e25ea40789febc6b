import {
  type Cause,
  type OnionType,
  onionTypes,
  type Plan,
  type PlanForm,
  startedOn,
  warmed,
} from '../../packages/engine/src/index.ts';
import type { StudyPlace } from './places.ts';
import { bestPlan } from './sound-plans.ts';
import { always, type Spoilt, spoiltCrop } from './spoilt.ts';

/** A kind is wrong for a place where no start of it is good in more seasons than this. */
const wrongShare = 0.5;
/** A longest day barely past the need turns few plants, h. */
const barelyH = 0.3;
/** Days by which starts are moved. */
const late = [35, 50, 65, 80] as const;
const early = [35, 50, 65, 80] as const;
const intoWinter = [0, 40, 60, 80, 100] as const;
/** Sets that flower, and sets that don't, mm across. */
const largeMm = 26;
const smallMm = 12;
/** So much warmer, no winter kills, °C. */
const milderC = 8;

const changed = (plan: Plan, fields: Partial<PlanForm>): Plan => ({ ...plan, ...fields }) as Plan;
const moved = (plan: Plan, days: number): Plan => startedOn(plan, plan.startDay + days, null);

/** Wrong kinds, wrong days, wrong sets, and what a bed lacks. */
export function putInBed(place: StudyPlace, sound: Plan): Spoilt[] {
  const spoilt = (cause: Cause, plan: Plan, otherwise: Partial<Spoilt> = {}) =>
    spoiltCrop(place, sound, cause, plan, otherwise);
  const unsaid = (cause: Cause, fields: Partial<PlanForm>, otherwise: Partial<Spoilt> = {}) =>
    spoilt(cause, changed(sound, fields), { ...otherwise, told: sound });
  const said = (cause: Cause, fields: Partial<PlanForm>, otherwise: Partial<Spoilt> = {}) =>
    spoilt(cause, changed(sound, fields), {
      ...otherwise,
      said: [...always, ...(Object.keys(fields) as (keyof PlanForm)[])],
    });
  const ofSmallSets = { site: place.lived, plan: changed(sound, { setSizeMm: smallMm }), store: null };
  return [
    ...wrongKinds(place, sound).flatMap(({ type, cause }) => [
      spoilt(cause, changed(sound, { type })),
      unsaid('wrong-seed', { type }),
    ]),
    ...late.map((days) => spoilt('started-too-late', moved(sound, days))),
    ...(sound.start === 'sets'
      ? [
          said('large-sets', { setSizeMm: largeMm }, { sound: ofSmallSets }),
          unsaid('large-sets', { setSizeMm: largeMm }, { sound: ofSmallSets }),
        ]
      : early.map((days) => spoilt('cold-on-large-plants', moved(sound, -days)))),
    ...intoWinter.map((days) => {
      const plan = moved(sound, days);
      const site = place.lived.reopened({ climate: warmed(place.climate, milderC) });
      return spoilt('winter-cold', plan, { sound: { site, plan, store: null } });
    }),
    unsaid('thirst', { water: 'rain' }),
    said('thirst', { water: 'rain' }),
    said('crowding', { densityPerM2: 160 }),
    said('shade', { sunHours: 4 }),
  ];
}

/** Kinds that no start suits here: one that another start would suit was started at the wrong time. */
function wrongKinds(place: StudyPlace, sound: Plan): { type: OnionType; cause: Cause }[] {
  const { asked, year } = place;
  const needOf = (type: OnionType) => asked.values.types[type].criticalPhotoperiodH;
  const longestH = asked.dayTable(2027).photoperiodH.reduce((a, b) => Math.max(a, b), 0);
  return onionTypes
    .filter(
      (type) => type !== sound.type && (bestPlan(asked, type, sound.start, year)?.good ?? 0) < wrongShare,
    )
    .map((type) => {
      if (needOf(type) < needOf(sound.type)) return { type, cause: 'type-too-early' };
      return { type, cause: needOf(type) > longestH - barelyH ? 'days-too-short' : 'type-too-late' };
    });
}
