import {
  type AdvisedYear,
  adviceOfPlace,
  advisedYear,
  namedOf,
  type PlaceAdvice,
  type PlaceFacts,
  placeFacts,
} from '@neckfall/answers';
import type { ClassAnswer, ClassSurvey, GrowingOptions, Site } from '@neckfall/engine';
import { type SiteAsked, siteOf } from './site.ts';
import { surveyAt } from './survey.ts';

export type WhereAsked = { site: SiteAsked; today: number; options: GrowingOptions };

/** What the headline tells, with the facts of the place and the picture of its year. */
export type WhereReply = PlaceAdvice & { facts: PlaceFacts; picture: AdvisedYear };

/** What was told of each survey that is kept: asked ahead, it is there when its town is chosen. */
const replies = new WeakMap<ClassSurvey, WhereReply>();

/** Which onion suits a place, and the year there. */
export function where({ site, today, options }: WhereAsked): WhereReply {
  const survey = surveyAt(site, today, options);
  const reply = replies.get(survey) ?? replyOf(siteOf(site), survey, today);
  replies.set(survey, reply);
  return reply;
}

function replyOf(site: Site, survey: ClassSurvey, today: number): WhereReply {
  const advice = adviceOfPlace(survey);
  return {
    ...advice,
    facts: placeFacts(site, today),
    picture: advisedYear(site, today, namedOf(advice)),
  };
}

/** All classes, the leading one first; the same survey goes on from there. */
export function whereClasses({ site, today, options }: WhereAsked): ClassAnswer[] {
  return surveyAt(site, today, options).classes();
}
