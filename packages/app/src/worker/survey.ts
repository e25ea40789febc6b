import { type ClassSurvey, type GrowingOptions, surveyOf } from '@neckfall/engine';
import { type SiteAsked, siteOf } from './site.ts';

const mostKept = 6;
const kept = new Map<string, ClassSurvey>();

/** The survey of a place; kept while among the last asked for, as each page of a place begins with its leader. */
export function surveyAt(asked: SiteAsked, today: number, options: GrowingOptions): ClassSurvey {
  // days gone by say nothing of starts to come
  const { climate, weather: _, ...ground } = asked;
  const { latitudeDeg, longitudeDeg, elevationM } = climate;
  const key = JSON.stringify([latitudeDeg, longitudeDeg, elevationM, ground, today, options]);
  const survey = kept.get(key) ?? surveyOf(siteOf({ climate, ...ground }), today, options);
  kept.delete(key);
  kept.set(key, survey);
  for (const oldest of kept.keys()) {
    if (kept.size <= mostKept) break;
    kept.delete(oldest);
  }
  return survey;
}
