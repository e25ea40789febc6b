import {
  type AdvisedYear,
  advisedYear,
  betterThanLead,
  type PlaceFacts,
  placeFacts,
} from '@neckfall/answers';
import type { ClassAnswer, ClassNow, ClassSurvey, GrowingOptions, Site } from '@neckfall/engine';
import { type SiteAsked, siteOf } from './site.ts';
import { surveyAt } from './survey.ts';

export type WhereAsked = { site: SiteAsked; today: number; options: GrowingOptions };

export type WhereReply = {
  facts: PlaceFacts;
  /** The class that suits the place best. */
  lead: ClassAnswer;
  /** Where that one is not good: another that ends better, of which the headline must not speak ill. */
  better: ClassAnswer | null;
  /** The best of what is in time today: told before the rest; null where nothing is. */
  now: ClassNow | null;
  picture: AdvisedYear;
};

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
  const lead = survey.lead();
  const now = survey.now();
  return {
    facts: placeFacts(site, today),
    lead,
    // the others take their time, and no headline speaks of all where the lead is good
    better: lead.verdict === 'good' || now ? null : betterThanLead(survey.classes()),
    now,
    picture: advisedYear(site, today, now ?? lead),
  };
}

/** All classes, the leading one first; the same survey goes on from there. */
export function whereClasses({ site, today, options }: WhereAsked): ClassAnswer[] {
  return surveyAt(site, today, options).classes();
}
