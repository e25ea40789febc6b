import type { SeasonSummary } from '@neckfall/engine';
import { ask } from '../../ask/ask.ts';
import { type Known, useAnswer } from '../../ask/use-answer.ts';
import { cropAsked } from '../../state/crop-asked.ts';
import { grownSite, grownSiteKey } from '../../state/grown-site.ts';
import { planOptions } from '../../state/plan-asked.ts';
import { seen } from '../../state/planting.ts';
import { today } from '../../state/today.ts';
import { pinned } from './pinned.ts';

/** The crop shown at some densities, each as this page would have it; an answer that comes late is overtaken. */
export function useSpacings(summary: SeasonSummary, densities: readonly number[]): Known<SeasonSummary[]> {
  const { crop, starts } = cropAsked.value;
  const { class: printed, start, date } = pinned(summary);
  const request = {
    // what was chosen for the reader is not chosen anew
    crop: crop ?? (printed === null ? null : { class: printed }),
    starts,
    start,
    startDay: date,
    options: planOptions.value,
    today: today.value,
    seen: [...seen.value].reverse(),
    densities,
  };
  const key = JSON.stringify([grownSiteKey.value, request]);
  return useAnswer(key, () => ask('spacingTried', { site: grownSite.value!, ...request }));
}
