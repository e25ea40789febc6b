import type { StartMethod } from '../plant/index.ts';
import { type ClassAnswer, longestNurseryDays, type Plan, type Site } from '../season/index.ts';
import { type CropAsked, cropAt } from './asked-crop.ts';
import { chooseKinds } from './choose-kinds.ts';
import { kindsOf } from './kind.ts';
import type { SurveyOptions } from './start-today.ts';

/** A plan as far as it was said. */
export type PlanAsked = {
  /** Null: whichever suits the place best. */
  crop: CropAsked | null;
  /** Ways in which the onion can be started. */
  starts: readonly StartMethod[];
  /** Null: the best. */
  start: StartMethod | null;
  startDay: number | null;
};

export type PlanChosen = { crop: CropAsked; start: StartMethod; startDay: number };

/**
 * The onion, its start and its day, chosen where nothing was said.
 *
 * @param lead the class that suits the place best, worked out when needed
 */
export function choosePlan(
  site: Site,
  { crop, starts, start, startDay }: PlanAsked,
  today: number,
  options: SurveyOptions,
  lead: () => ClassAnswer,
): PlanChosen {
  if (crop !== null && start !== null && startDay !== null) return { crop, start, startDay };
  let onion = crop;
  if (onion === null) {
    const best = lead();
    onion = { class: best.class };
    if (start === null && startDay === null)
      return { crop: onion, start: best.bestStart, startDay: best.summary.plan.startDay };
  }
  const ways = start === null ? starts : [start];
  const offer = {
    name: '',
    ...cropAt(site, onion),
    starts: ways,
    keepsMonths: [0, 0],
    keepsFrom: 'type',
  } as const;
  const [best] = chooseKinds(site, kindsOf([offer]), today, options) ?? [];
  return {
    crop: onion,
    start: start ?? best?.kind.start ?? starts[0],
    startDay: startDay ?? best?.summary.plan.startDay ?? today,
  };
}

/** A day asked for planting out goes with raised seedlings, and comes after the sowing; null: as the plants are ready. */
export function plantOutFor(
  asked: number | null,
  { start, startDay }: Pick<Plan, 'start' | 'startDay'>,
): number | null {
  return start === 'raised-seedlings' &&
    asked !== null &&
    asked > startDay &&
    asked <= startDay + longestNurseryDays
    ? asked
    : null;
}
