import {
  classOfType,
  type DayNumber,
  type Kept,
  lastSuchDay,
  latestStart,
  type Plan,
  type PlanForm,
  type Said,
  type StoreSaid,
  type Symptom,
  storeClimateOf,
  typeForClass,
  usualStart,
  type WhyAnswer,
  whyOf,
} from '@neckfall/engine';
import { type CropUnderWayAsked, cropUnderWay } from './crop-under-way.ts';
import { lastFew } from './last-few.ts';
import { siteOf } from './site.ts';

export type WhyAheadAsked = CropUnderWayAsked & {
  /** Fields of the plan that the grower said. */
  said: readonly (keyof PlanForm)[];
  isAbout: boolean;
  symptoms: readonly Symptom[];
  answers: Said;
  noticed: DayNumber | null;
  keepsMonths: Kept['keepsMonths'];
  store: StoreSaid;
  isStoreSaid: boolean;
};

export type WhyAhead = {
  /** The crop that is asked about, before anything was answered. */
  plan: Plan;
  /** Its tops go over, in the middle of the seasons; null: they mostly do not. */
  neckFall: DayNumber | null;
  /** Null while nothing is said to have been seen. */
  answer: WhyAnswer | null;
  /** Packets of its class hold the onion of next year's plan here. */
  isNextOfClass: boolean;
};

/** Why a crop came to what was seen of it; what was not said of the crop is as most grow it there. */
export function whyAhead(asked: WhyAheadAsked): WhyAhead {
  const { said, isAbout, symptoms, answers, noticed, keepsMonths, store, isStoreSaid, ...crop } = asked;
  const { plan, site, summary } = cropUnderWay(asGrown(crop, symptoms, noticed));
  const neckFall = summary.neckFall.days?.p50 ?? null;
  if (symptoms.length === 0) return { plan, neckFall, answer: null, isNextOfClass: true };
  const answer = whyOf(site, {
    plan,
    said: new Set(said),
    isAbout,
    today: crop.today,
    symptoms,
    noticed,
    store: storeClimateOf(site.climate, store),
    isStoreSaid,
    keepsMonths,
    answers,
  });
  const { type, start, startDay } = answer.nextYear.plan;
  const isNextOfClass = typeForClass(site, classOfType[type], start, startDay) === type;
  return { plan, neckFall, answer, isNextOfClass };
}

/** What most grow is asked for anew with each thing seen. */
const kept = lastFew<ReturnType<typeof usualStart>>(4);

function asGrown(
  asked: CropUnderWayAsked,
  symptoms: readonly Symptom[],
  noticed: DayNumber | null,
): CropUnderWayAsked {
  const { site, crop, starts, start, startDay, today } = asked;
  if (crop !== null && start !== null && startDay !== null) return asked;
  const { weather: _, ...ground } = site;
  const said = { crop, sold: starts, start, startDay, symptoms };
  const usual = kept(JSON.stringify([ground, said, today]), () => usualStart(siteOf(ground), said, today));
  return {
    ...asked,
    crop: crop ?? { class: usual.class ?? 'long' },
    start: usual.start,
    startDay: startDay ?? lastSuchDay(usual.startDay, latestStart(symptoms, noticed ?? today)),
  };
}
