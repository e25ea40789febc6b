import type { LeafCheckpoint } from '@neckfall/engine';
import type { Speaker } from '@neckfall/words';

/** What to count of leaves some weeks before bulbs start, and what that tells. */
export function leafCheckSentence(
  { day, leavesGreen: { p10, p90 }, parting }: LeafCheckpoint,
  { say, day: date, number, numberRange, quantity }: Speaker,
): string {
  if (parting === null) {
    return say('leaf-check.see', {
      date: date(day),
      leaves: numberRange(p10, p90),
      most: Math.round(p90),
    });
  }
  return say('leaf-check.parting', {
    date: date(day),
    many: number(parting.smallUpTo + 1),
    few: number(parting.smallUpTo),
    good: quantity('bulbLength', parting.goodMm),
    small: quantity('bulbLength', parting.smallMm),
  });
}
