import { tryStarts, waysOf } from '../choice/index.ts';
import type { Site } from '../season/index.ts';
import type { TooLateAnswer, WhichOnionAnswer } from './common-answer.ts';
import type { CommonAsked } from './common-asked.ts';

/** Which onion to buy, as the first page has it. */
export function whichOnion(_: Site, { survey }: CommonAsked): WhichOnionAnswer {
  return { question: 'which-onion', classes: survey.classes(), now: survey.now() };
}

/** Whether it is too late today, and the year of starts of the onion that it is about. */
export function tooLate(site: Site, { survey, today, options }: CommonAsked): TooLateAnswer {
  const now = survey.now();
  const about = now ?? survey.lead();
  const ways = waysOf(site, { class: about.class }, [about.bestStart]);
  return {
    question: 'too-late',
    classes: survey.classes(),
    now,
    today: survey.today(),
    starts: tryStarts(site, ways, options, today),
  };
}
