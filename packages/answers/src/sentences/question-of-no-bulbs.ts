import type { LateSowing } from '@neckfall/engine';
import type { Speaker } from '@neckfall/words';
import { type AnswerTo, type QuestionContext, type QuestionSaid, seasonWords } from './question-context.ts';
import { insteadWords } from './where-headline.ts';

/** Why bulbs never came: the place, the kind, or a late start. */
export function neverBulbedSaid(
  answer: AnswerTo<'never-bulbed'>,
  context: QuestionContext,
  speaker: Speaker,
): QuestionSaid {
  const { own, stranger, late, isPlace, longestSunUpH } = answer;
  const { place, today } = context;
  const { say, dayLength } = speaker;
  const lateWords = late && wordsOfLate(late, today, speaker);
  const ownWords = seasonWords(own, today, speaker);
  const ownSaid = own.outcome === 'good' ? [say('question.never.own', ownWords)] : [];
  const lateToo = lateWords ? [say('question.never.late-too', lateWords)] : [];
  const look = say('question.never.look');
  const waits = stranger
    ? [
        say('question.never.waits', {
          needed: dayLength(stranger.neededSunUpH),
          longest: dayLength(longestSunUpH),
        }),
      ]
    : [];
  if (isPlace)
    return {
      headline: say('question.never.place', { place }),
      because: [
        speaker.reason(own.reason),
        say('question.never.place-best', ownWords),
        ...lateToo,
        say('question.never.place-instead', { instead: insteadWords(speaker) }),
      ],
      cautions: [],
    };
  if (stranger) {
    const { type } = stranger.summary.plan;
    const years = seasonWords(stranger.summary, today, speaker).bare;
    return {
      headline: say('question.never.stranger', { place, kind: say(`type-head.${type}`), years }),
      because: [...waits, ...ownSaid, ...lateToo, look],
      cautions: [],
    };
  }
  if (lateWords)
    return {
      headline: say('question.never.late', { place, ...lateWords }),
      because: [say('question.never.young'), ...ownSaid, look],
      cautions: [],
    };
  return { headline: say('question.never.shade', { place }), because: [...ownSaid, look], cautions: [] };
}

function wordsOfLate({ summary, bulblessShare, isWinter }: LateSowing, today: number, speaker: Speaker) {
  const { kind, date } = seasonWords(summary, today, speaker);
  return {
    kind,
    date,
    years: speaker.years(bulblessShare, summary.years),
    end: isWinter ? 'winter' : 'green',
  };
}
