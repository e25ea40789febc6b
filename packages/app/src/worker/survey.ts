import { type ClassSurvey, type GrowingOptions, surveyOf } from '@neckfall/engine';
import { lastFew } from './last-few.ts';
import { type SiteAsked, siteOf } from './site.ts';

const kept = lastFew<ClassSurvey>(6);

/** The survey of a place; kept while among the last asked for, as each page of a place begins with its leader. */
export function surveyAt(asked: SiteAsked, today: number, options: GrowingOptions): ClassSurvey {
  // days gone by say nothing of starts to come
  const { climate, weather: _, ...ground } = asked;
  const { latitudeDeg, longitudeDeg, elevationM } = climate;
  const key = JSON.stringify([latitudeDeg, longitudeDeg, elevationM, ground, today, options]);
  return kept(key, () => surveyOf(siteOf({ climate, ...ground }), today, options));
}
