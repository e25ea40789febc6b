import { type SmallTrial, smallHabits } from '@neckfall/engine';
import type { Speaker } from '@neckfall/words';
import { type AnswerTo, type QuestionContext, type QuestionSaid, seasonWords } from './question-context.ts';

/** Why bulbs never came: the kind, or a late start. */
export function neverBulbedSaid(
  { own, stranger, late, longestSunUpH }: AnswerTo<'never-bulbed'>,
  { place, today }: QuestionContext,
  speaker: Speaker,
): QuestionSaid {
  const { say, dayLength } = speaker;
  const lateWords = late && seasonWords(late, today, speaker);
  const ownSaid = own.outcome === 'good' ? [say('question.never.own', seasonWords(own, today, speaker))] : [];
  const look = say('question.never.look');
  if (stranger) {
    const { type } = stranger.summary.plan;
    const values = {
      place,
      kind: say(`type-head.${type}`),
      years: seasonWords(stranger.summary, today, speaker).bare,
    };
    return {
      headline: say('question.never.stranger', values),
      because: [
        say('question.never.waits', {
          needed: dayLength(stranger.neededSunUpH),
          longest: dayLength(longestSunUpH),
        }),
        ...ownSaid,
        ...(lateWords
          ? [say('question.never.late-too', { date: lateWords.date, years: lateWords.bare })]
          : []),
        look,
      ],
      cautions: [],
    };
  }
  if (lateWords)
    return {
      headline: say('question.never.late', { place, date: lateWords.date, years: lateWords.bare }),
      because: [say('question.never.young'), ...ownSaid, look],
      cautions: [],
    };
  return { headline: say('question.never.shade', { place }), because: [...ownSaid, look], cautions: [] };
}

/** Bulbs smaller by this share of the size are told. */
const tellingShare = 0.05;
/** Faults told after the first. */
const mostOthers = 3;

/** Why bulbs stay small: the fault that costs most here, and the next. */
export function tooSmallSaid(
  { own, trials }: AnswerTo<'too-small'>,
  { place, today }: QuestionContext,
  speaker: Speaker,
): QuestionSaid {
  const { say, all } = speaker;
  const ownMm = own.bulbDiameterMm?.p50 ?? 0;
  const telling = trials.filter(
    ({ summary }) => (summary.bulbDiameterMm?.p50 ?? 0) <= (1 - tellingShare) * ownMm,
  );
  const words = seasonWords(own, today, speaker);
  const [first, ...rest] = telling;
  const isGood = own.outcome === 'good';
  const headline = !isGood
    ? say('question.small.poor', { place, own: words.size })
    : first
      ? say('question.small.head', {
          place,
          cause: causeWords(first, speaker),
          small: seasonWords(first.summary, today, speaker).size,
          own: words.size,
        })
      : say('question.small.none', { place, own: words.size });
  const others = (isGood ? rest : telling).slice(0, mostOthers).map((trial) =>
    say('question.small.item', {
      cause: causeWords(trial, speaker),
      size: seasonWords(trial.summary, today, speaker).size,
    }),
  );
  const leaves = Math.round(own.leavesMadeAtOnset?.p50 ?? 0);
  return {
    headline,
    because: [
      ...(others.length > 0
        ? [say('question.small.others', { count: others.length, others: all(others) })]
        : []),
      say('question.small.own', words),
      ...(leaves > 0 ? [say('question.small.leaves', { leaves })] : []),
    ],
    cautions: [],
  };
}

function causeWords({ cause, summary }: SmallTrial, { say, quantity, number }: Speaker): string {
  return say(`question.small.cause.${cause}`, {
    weeks: number(smallHabits.lateDays / 7),
    density: quantity('density', smallHabits.crowdedPerM2),
    hours: number(smallHabits.shadedSunHours),
    kind: say(`type.${summary.plan.type}`),
  });
}
