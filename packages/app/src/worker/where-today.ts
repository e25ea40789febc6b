import type { GrowingOptions, TodayAnswer } from '@neckfall/engine';
import type { SiteAsked } from './site.ts';
import { surveyAt } from './survey.ts';

export type WhereTodayAsked = { site: SiteAsked; today: number; options: GrowingOptions };

/** What each class, started each way, is worth today. */
export function whereToday({ site, today, options }: WhereTodayAsked): TodayAnswer[] {
  return surveyAt(site, today, options).today();
}
