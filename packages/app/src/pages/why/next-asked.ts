import { classOfType, densityOf, planDefaults, plantOutDayOf, type WhyAnswer } from '@neckfall/engine';
import type { Asked } from '../../address/address-form.ts';
import { noOnion } from '../../address/no-onion.ts';
import { onion } from '../../state/onion.ts';
import { spacing } from '../../state/plan-asked.ts';
import { asked } from '../../state/route.ts';

/** What an address asks to show next year's plan, and nothing more of what went wrong. */
export function askedOfNext({ plan, change }: WhyAnswer['nextYear']): Partial<Asked> {
  const isOther = change?.code === 'other-kind' || onion.value.crop === null;
  const isAsSpaced = Math.abs(plan.densityPerM2 - densityOf(spacing.value)) < 0.5;
  return {
    ...(isOther ? { ...noOnion, class: classOfType[plan.type] } : {}),
    start: plan.start,
    date: plan.startDay,
    plantOut: asked.value.plantOut === null ? null : plantOutDayOf(plan),
    cover: plan.cover === 'none' ? null : plan.cover,
    water: plan.water === 'rain' ? plan.water : null,
    sun: plan.sunHours,
    ...(plan.start === 'sets' && {
      setSize: plan.setSizeMm === planDefaults.setSizeMm ? null : plan.setSizeMm,
      setStore: plan.setStore === 'warm' ? plan.setStore : null,
    }),
    ...(isAsSpaced ? {} : { rowDistance: null, plantDistance: null, perStation: null }),
    planting: null,
    bed: null,
    symptoms: null,
    answers: null,
    isAbout: null,
    noticed: null,
    taken: null,
  };
}
