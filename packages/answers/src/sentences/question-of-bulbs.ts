import { type SmallTrial, smallHabits } from '@neckfall/engine';
import type { Speaker } from '@neckfall/words';
import { type AnswerTo, type QuestionContext, type QuestionSaid, seasonWords } from './question-context.ts';

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
        ? [
            isGood
              ? say('question.small.others', { count: others.length, others: all(others) })
              : say('question.small.worse', { others: all(others) }),
          ]
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
