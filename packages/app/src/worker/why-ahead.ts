import {
  choosePlan,
  type DayNumber,
  type Kept,
  type Plan,
  type PlanForm,
  type Said,
  type StoreSaid,
  type Symptom,
  storeClimateOf,
  type WhyAnswer,
  whyOf,
} from '@neckfall/engine';
import { type CropUnderWayAsked, cropUnderWay } from './crop-under-way.ts';
import { lastStart } from './last-start.ts';
import { metSiteOf } from './met-site.ts';
import { surveyAt } from './survey.ts';

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
};

/** Why a crop came to what was seen of it; a crop of which no day is said was started when it last was time for it. */
export function whyAhead(asked: WhyAheadAsked): WhyAhead {
  const { said, isAbout, symptoms, answers, noticed, keepsMonths, isStoreSaid, ...crop } = asked;
  const { plan, site, summary } = cropUnderWay(asOf(crop, symptoms));
  const store = storeClimateOf(site.climate, crop.store);
  const neckFall = summary.neckFall.days?.p50 ?? null;
  if (symptoms.length === 0) return { plan, neckFall, answer: null };
  const answer = whyOf(site, {
    plan,
    said: new Set(said),
    isAbout,
    today: crop.today,
    symptoms,
    noticed,
    store,
    isStoreSaid,
    keepsMonths,
    answers,
  });
  return { plan, neckFall, answer };
}

function asOf<Asked extends CropUnderWayAsked>(asked: Asked, symptoms: readonly Symptom[]): Asked {
  if (asked.startDay !== null) return asked;
  const { site, today } = asked;
  const { plantOutDay: _, ...options } = asked.options;
  const usual = metSiteOf(site, Number.POSITIVE_INFINITY);
  const chosen = choosePlan(usual, asked, today, options, () => surveyAt(site, today, options));
  const startedOn = (startDay: DayNumber) => ({ ...asked, ...chosen, startDay });
  const startDay = lastStart(chosen.startDay, today, symptoms, (day) => {
    const { summary } = cropUnderWay(startedOn(day));
    return summary.neckFall.days?.p50 ?? null;
  });
  return startedOn(startDay);
}
