import { type ClassAnswer, type SurveyOptions, surveyClasses } from '@neckfall/engine';
import { type SiteAsked, siteOf } from './site.ts';

const mostKept = 6;
const kept = new Map<string, ClassAnswer[]>();

/** The classes at a place, best first; kept while among the last asked for, as each page of a place begins with them. */
export function classesAt(asked: SiteAsked, today: number, options: SurveyOptions): ClassAnswer[] {
  const { climate, ...ground } = asked;
  const { latitudeDeg, longitudeDeg, elevationM } = climate;
  const key = JSON.stringify([latitudeDeg, longitudeDeg, elevationM, ground, today, options]);
  const classes = kept.get(key) ?? surveyClasses(siteOf(asked), today, options);
  kept.delete(key);
  kept.set(key, classes);
  for (const oldest of kept.keys()) {
    if (kept.size <= mostKept) break;
    kept.delete(oldest);
  }
  return classes;
}
