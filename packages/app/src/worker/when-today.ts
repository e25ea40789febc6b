import {
  type CropAsked,
  type GrowingOptions,
  type StartMethod,
  surveyWays,
  type TodayAnswer,
  waysOf,
} from '@neckfall/engine';
import { grownSiteOf } from './grown-site.ts';
import type { Work } from './protocol.ts';
import type { SiteAsked } from './site.ts';

export type WhenTodayAsked = {
  site: SiteAsked;
  crop: CropAsked;
  starts: readonly StartMethod[];
  today: number;
  options: GrowingOptions;
};

/** What each of these ways of starting an onion is worth today. */
export async function whenToday(
  { site: asked, crop, starts, today, options }: WhenTodayAsked,
  work: Work<never>,
): Promise<TodayAnswer[]> {
  const site = grownSiteOf(asked);
  const answers: TodayAnswer[] = [];
  for (const start of starts) {
    answers.push(...surveyWays(site, waysOf(site, crop, [start]), today, options).today());
    // a dragged date comes first
    await work.pause();
  }
  return answers;
}
