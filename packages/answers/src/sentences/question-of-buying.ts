import type { ClassSurvey } from '@neckfall/engine';
import type { Speaker } from '@neckfall/words';
import { adviceOfPlace } from './choice-sentences.ts';
import { type AnswerTo, type QuestionContext, type QuestionSaid, seasonWords } from './question-context.ts';
import { todaySentence } from './today-sentence.ts';
import { bestOfYearSentence, namedOf, whereHeadline } from './where-headline.ts';

/** Which onion to buy, in the words of the first page. */
export function whichOnionSaid(
  { classes, now }: AnswerTo<'which-onion'>,
  { place, today }: QuestionContext,
  speaker: Speaker,
): QuestionSaid {
  const survey: Pick<ClassSurvey, 'lead' | 'now' | 'classes'> = {
    lead: () => classes[0],
    now: () => now,
    classes: () => [...classes],
  };
  const advice = adviceOfPlace(survey);
  const best = bestOfYearSentence(advice, today, speaker);
  return {
    headline: whereHeadline(advice, place, today, speaker),
    because: [speaker.reason(namedOf(advice).reason), ...(best ? [best] : [])],
    cautions: [speaker.say('app.caution.bought'), speaker.say('app.caution.treated')],
  };
}

/** Whether it is too late today, in the words of the first page. */
export function tooLateSaid(
  { classes, today: starts, now }: AnswerTo<'too-late'>,
  { place, today }: QuestionContext,
  speaker: Speaker,
): QuestionSaid {
  const { say } = speaker;
  const [lead] = classes;
  const isOpen = starts.some(
    ({ stillGoodUntil, ...start }) => stillGoodUntil !== null && start.class === lead.class,
  );
  const isNever = starts.every((start) => start.class !== lead.class || start.nextFrom === null);
  const isLeadNow = now !== null && now.summary.plan.startDay === lead.summary.plan.startDay;
  return {
    headline: say('question.late.head', {
      place,
      still: isOpen || now !== null ? 'yes' : isNever ? 'never' : 'no',
      today: todaySentence({ classes, today: starts }, today, speaker),
    }),
    because: [
      ...(now && !isLeadNow ? [say('question.late.now', seasonWords(now.summary, today, speaker))] : []),
      ...(lead.verdict === 'good'
        ? [say('question.late.best', seasonWords(lead.summary, today, speaker))]
        : []),
    ],
    cautions: [say('app.caution.promise')],
  };
}
