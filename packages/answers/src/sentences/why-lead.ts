import type { CauseFound, WhyAnswer } from '@neckfall/engine';
import type { Speaker } from '@neckfall/words';
import { causeLabel } from './why-causes.ts';

/** From these probabilities on the leading cause is told as sure, and as likely. */
const sureFrom = 0.7;
const likelyFrom = 0.4;
/** What shows in so many seasons as told may be the year alone. */
const oftenFrom = 0.1;

/** A probability as people say it: "8 in 10". */
export function chanceText(probability: number, { say }: Speaker): string {
  if (probability < 0.05) return say('why.chance.least');
  if (probability > 0.95) return say('why.chance.most');
  return say('why.chance.tenths', { tenths: Math.min(9, Math.max(1, Math.round(probability * 10))) });
}

/** A cause less likely than this is no answer. */
const leastLead = 0.05;

/** The cause that heads an answer; null: none is likely enough. */
export function leadOf({ causes: [first] }: Pick<WhyAnswer, 'causes'>): CauseFound | null {
  return first && first.probability >= leastLead ? first : null;
}

/** The answer in one line: the likeliest cause and how sure it is, or that nothing known fits. */
export function whyLead(answer: Pick<WhyAnswer, 'causes' | 'unseen' | 'usual'>, speaker: Speaker): string {
  const lead = leadOf(answer);
  if (lead === null) return unseenSentence(answer, speaker);
  const { cause, probability } = lead;
  const sureness = probability >= sureFrom ? 'sure' : probability >= likelyFrom ? 'likely' : 'unsure';
  return speaker.say(`why.lead.${sureness}`, {
    cause: causeLabel(cause, speaker),
    chance: chanceText(probability, speaker),
  });
}

/** How likely it is something that can't be known. */
export function unseenSentence(
  { unseen, usual }: Pick<WhyAnswer, 'unseen' | 'usual'>,
  speaker: Speaker,
): string {
  const { say } = speaker;
  const told = say('why.unseen', { chance: chanceText(unseen, speaker) });
  if (unseen < likelyFrom || usual < oftenFrom) return told;
  return `${told} ${say('why.usual', { seasons: say('why.of.seasons', { tenths: Math.round(10 * usual) }) })}`;
}
