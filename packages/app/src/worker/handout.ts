import { type HandoutFacts, handoutFacts } from '@neckfall/answers';
import { siteOf } from './site.ts';
import { surveyAt } from './survey.ts';
import type { WhereAsked } from './where.ts';

/** What a sheet to hand out tells of a place; its survey is that of Where. */
export function handout({ site, today, options }: WhereAsked): HandoutFacts {
  return handoutFacts(siteOf(site), surveyAt(site, today, options), today);
}
