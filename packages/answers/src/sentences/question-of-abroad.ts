import type { FromAbroad } from '@neckfall/engine';
import type { Speaker } from '@neckfall/words';
import { type AnswerTo, type QuestionContext, type QuestionSaid, seasonWords } from './question-context.ts';

/** Whether the onion of a friend far away does here. */
export function fromAbroadSaid(
  { own, kinds, longestSunUpH }: AnswerTo<'from-abroad'>,
  { place, today }: QuestionContext,
  speaker: Speaker,
): QuestionSaid {
  const { say, dayLength } = speaker;
  return {
    headline: say('question.abroad.head', {
      place,
      kinds: kindsWords(kinds, today, speaker),
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

/** What ends alike is said once. */
function kindsWords(kinds: readonly FromAbroad[], today: number, speaker: Speaker): string {
  const { say } = speaker;
  const yearsFrom = (of: FromAbroad['from']) => {
    const kind = kinds.find(({ from }) => from === of);
    return kind ? seasonWords(kind.summary, today, speaker).years : '';
  };
  const [first, second] = kinds;
  if (second && endingOf(first) === endingOf(second)) {
    const ending = endingOf(first) === 'no-bulb' ? 'bare' : endingOf(first);
    const values = { ending, tropics: yearsFrom('tropics'), north: yearsFrom('north') };
    return say('question.abroad.both', values);
  }
  return kinds
    .map((kind) => kindWords(kind, today, speaker))
    .reduceRight((rest, one) => say('list.parts', { first: one, rest }));
}

function kindWords(kind: FromAbroad, today: number, speaker: Speaker): string {
  const { from, summary } = kind;
  return speaker.say(`question.abroad.${endingOf(kind)}`, { from, ...seasonWords(summary, today, speaker) });
}

function endingOf({ summary: { outcome, gamble } }: FromAbroad) {
  if (gamble) return 'gamble';
  return outcome === 'good' || outcome === 'small' || outcome === 'no-bulb' ? outcome : 'poor';
}
