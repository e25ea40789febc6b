import { type Symptom, symptomTimes } from '@neckfall/engine';
import { ask } from '../../ask/ask.ts';
import { useAnswer } from '../../ask/use-answer.ts';
import { saidFields } from '../../garden/said-of.ts';
import { gardenStanding } from '../../state/garden.ts';
import { grownSite, grownSiteKey } from '../../state/grown-site.ts';
import { kept } from '../../state/kept.ts';
import { kitchenSaid, storeReadings } from '../../state/kitchen.ts';
import { planOptions } from '../../state/plan-asked.ts';
import { planting, seen } from '../../state/planting.ts';
import { asked } from '../../state/route.ts';
import { today } from '../../state/today.ts';
import { whyCrop } from './why-crop.ts';

export function isOfStore(symptom: Symptom): boolean {
  return symptomTimes[symptom] === 'store';
}

/** Whether anybody said where onions are kept, or read its air. */
export function isStoreSaid(): boolean {
  return kitchenSaid.value.store !== null || storeReadings.value.length > 0;
}

/** Why the crop of the address came to this. */
export function useWhy(symptoms: readonly Symptom[]) {
  const { answers, isAbout, noticed } = asked.value;
  const inStore = symptoms.some(isOfStore);
  const request = {
    ...whyCrop.value,
    ...kept.value,
    options: planOptions.value,
    today: today.value,
    seen: [...seen.value].reverse(),
    said: saidFields(asked.value, gardenStanding.value?.garden ?? null, planting.value),
    isAbout: isAbout === true,
    symptoms,
    answers: answers ?? {},
    noticed: inStore ? noticed : null,
    isStoreSaid: isStoreSaid(),
  };
  const site = grownSiteKey.value;
  const key = site && JSON.stringify([site, request]);
  return useAnswer(key, () => ask('whyAhead', { site: grownSite.value!, ...request }));
}
