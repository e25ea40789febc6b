import type { LearntSeason, SeasonSummary } from '@neckfall/engine';
import type { Speaker } from '@neckfall/words';
import { learntSentences } from './learnt-sentences.ts';
import { standingSentences, standsAsUsual } from './standing-sentences.ts';

/**
 * How a crop stands by its leaves, and what was learnt of its plants. What the tops make of it is told once, and not of a
 * crop that was lifted.
 *
 * @param now the season as learnt
 * @param expected the season as it was expected in the same weather before anything was seen
 */
export function plantsSentences(
  learnt: LearntSeason,
  now: SeasonSummary,
  expected: SeasonSummary,
  speaker: Speaker,
): { stands: string[]; learnt: string[] } {
  const stands = standingSentences(learnt, now, expected, speaker);
  const shifts = learntSentences(learnt, speaker, learnt.liftedOn === null && stands.length < 2);
  const isUsual = learnt.observations > 0 && shifts.length === 0 && standsAsUsual(learnt.standing);
  return { stands, learnt: isUsual ? [speaker.say('learnt.as-usual')] : shifts };
}

/**
 * All that is said of a crop that was looked at: what was learnt of it, how it stands, what that means and what can still
 * be done, and what was left out.
 *
 * @param now the season as learnt
 * @param expected the season as it was expected in the same weather before anything was seen
 * @param hasEarlier whether earlier plantings were learnt from
 */
export function seenSentences(
  learnt: LearntSeason,
  now: SeasonSummary,
  expected: SeasonSummary,
  hasEarlier: boolean,
  speaker: Speaker,
): string[] {
  const { say, day } = speaker;
  const { later, asOf, liftedOn } = learnt;
  const plants = plantsSentences(learnt, now, expected, speaker);
  return [
    ...plants.learnt,
    ...plants.stands,
    ...(hasEarlier ? [say('learnt.before')] : []),
    ...(liftedOn === null ? [] : [say('learnt.lifted', { date: day(liftedOn) })]),
    ...(later > 0 ? [say('learnt.later', { count: later, date: day(asOf) })] : []),
  ];
}
