import { type SurveyOptions, surveyToday, type TodayAnswer } from '@neckfall/engine';
import { type SiteAsked, siteOf } from './site.ts';

export type WhereTodayAsked = { site: SiteAsked; today: number; options: SurveyOptions };

/** What each class, started each way, is worth today. */
export function whereToday({ site, today, options }: WhereTodayAsked): TodayAnswer[] {
  return surveyToday(siteOf(site), today, options);
}
