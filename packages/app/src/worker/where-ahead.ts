import type { Work } from './protocol.ts';
import { siteOf } from './site.ts';
import { surveyAt } from './survey.ts';
import { type WhereAsked, where } from './where.ts';

/** Works out what {@link where} may be asked next and keeps it; gives way between its steps to what is asked. */
export async function whereAhead(asked: WhereAsked, work: Work): Promise<true> {
  await work.pause();
  siteOf(asked.site);
  await work.pause();
  const survey = surveyAt(asked.site, asked.today, asked.options);
  await work.pause();
  survey.lead();
  await work.pause();
  survey.now();
  await work.pause();
  where(asked);
  return true;
}
