import {
  type CropAsked,
  cropAt,
  cropToday,
  type StartMethod,
  type SurveyOptions,
  type TodayAnswer,
} from '@neckfall/engine';
import type { Work } from './protocol.ts';
import { type SiteAsked, siteOf } from './site.ts';

export type WhenTodayAsked = {
  site: SiteAsked;
  crop: CropAsked;
  starts: readonly StartMethod[];
  today: number;
  options: SurveyOptions;
};

/** What each of these ways of starting an onion is worth today. */
export async function whenToday(
  { site: asked, crop, starts, today, options }: WhenTodayAsked,
  work: Work<never>,
): Promise<TodayAnswer[]> {
  const site = siteOf(asked);
  const onion = cropAt(site, crop);
  const answers: TodayAnswer[] = [];
  for (const start of starts) {
    answers.push(cropToday(site, crop, onion, start, today, options));
    // a dragged date comes first
    await work.pause();
  }
  return answers;
}
