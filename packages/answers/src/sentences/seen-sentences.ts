import type { LearntSeason, SeasonSummary } from '@neckfall/engine';
import type { Speaker } from '@neckfall/words';
import { learntSentences } from './learnt-sentences.ts';
import { standingSentences, standsAsUsual } from './standing-sentences.ts';

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
  const { observations, later, asOf, liftedOn, standing } = learnt;
  const learntOf = learntSentences(learnt, speaker);
  const isUsual = observations > 0 && learntOf.length === 0 && standsAsUsual(standing);
  return [
    ...learntOf,
    ...(isUsual ? [say('learnt.as-usual')] : []),
    ...standingSentences(learnt, now, expected, speaker),
    ...(hasEarlier ? [say('learnt.before')] : []),
    ...(liftedOn === null ? [] : [say('learnt.lifted', { date: day(liftedOn) })]),
    ...(later > 0 ? [say('learnt.later', { count: later, date: day(asOf) })] : []),
  ];
}
