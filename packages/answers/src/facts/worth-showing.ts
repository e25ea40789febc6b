import type { Choice } from '@neckfall/engine';

/** Good in hardly any year: named only where nothing does better. */
const hopelessShare = 0.1;
const hopelessShown = 3;

/** Choices that a grower may want to hear of. */
export function worthShowing(choices: readonly Choice[]): readonly Choice[] {
  const hopeful = choices.filter(({ summary }) => summary.seasonShares.good >= hopelessShare);
  return hopeful.length > 0 ? hopeful : choices.slice(0, hopelessShown);
}
