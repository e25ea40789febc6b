import { keepYearOf } from '../keep/index.ts';
import type { Site } from '../season/index.ts';
import type { HowManyAnswer } from './common-answer.ts';
import type { CommonAsked } from './common-asked.ts';

/** How many to plant for a year, and until when they keep. */
export function howMany(site: Site, { kinds, household, today, options }: CommonAsked): HowManyAnswer {
  return { question: 'how-many', year: keepYearOf(site, kinds, household, today, options) };
}
