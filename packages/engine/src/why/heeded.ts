import type { PlanForm } from '../season/index.ts';
import type { WhyAsked } from './answer.ts';
import { changed } from './trials.ts';

/** Sets by what they look like, mm across (common practice, no source); sun by the part of the day, h at midsummer. */
const setMm = { pea: 10, hazelnut: 16, walnut: 26 } as const;
const sunHours = { 'all-day': null, 'half-day': 6, shade: 3 } as const;

/** The crop with what was answered laid into its plan: what a grower says is a fact. */
export function heeded(asked: WhyAsked): WhyAsked {
  const { answers } = asked;
  const told: Partial<PlanForm> = {};
  const { watering, sun, 'set-size': size } = answers;
  if (watering === 'often') told.water = 'watered';
  if (watering === 'rain-only') told.water = 'rain';
  if (sun && sun !== 'not-sure') told.sunHours = sunHours[sun];
  if (size && size !== 'not-sure' && asked.plan.start === 'sets') told.setSizeMm = setMm[size];
  const { plan } = changed(asked, told);
  return { ...asked, plan, said: new Set([...asked.said, ...(Object.keys(told) as (keyof PlanForm)[])]) };
}
