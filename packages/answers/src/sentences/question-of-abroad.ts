import type { FromAbroad } from '@neckfall/engine';
import type { Speaker } from '@neckfall/words';
import { type AnswerTo, type QuestionContext, type QuestionSaid, seasonWords } from './question-context.ts';

/** Whether the onion of a friend far away does here. */
export function fromAbroadSaid(
  { own, kinds, longestSunUpH }: AnswerTo<'from-abroad'>,
  { place, today }: QuestionContext,
  speaker: Speaker,
): QuestionSaid {
  const { say, all, dayLength } = speaker;
  return {
    headline: say('question.abroad.head', {
      place,
      kinds: all(kinds.map((kind) => kindWords(kind, today, speaker))),
    }),
    because: [
      ...kinds.map(({ from, summary, neededSunUpH }) => {
        const values = {
          needed: dayLength(neededSunUpH),
          longest: dayLength(longestSunUpH),
          date: seasonWords(summary, today, speaker).date,
        };
        if (from === 'north') return say('question.abroad.waits', values);
        return say(
          summary.outcome === 'good' ? 'question.abroad.early-enough' : 'question.abroad.early',
          values,
        );
      }),
      ...(own.bulbDiameterMm ? [say('question.abroad.own', seasonWords(own, today, speaker))] : []),
      say('question.abroad.ask'),
    ],
    cautions: [say('question.abroad.caution')],
  };
}

function kindWords({ from, summary }: FromAbroad, today: number, speaker: Speaker): string {
  const { outcome, gamble } = summary;
  const ending = gamble
    ? 'gamble'
    : outcome === 'good' || outcome === 'small' || outcome === 'no-bulb'
      ? outcome
      : 'poor';
  return speaker.say(`question.abroad.${ending}`, { from, ...seasonWords(summary, today, speaker) });
}
