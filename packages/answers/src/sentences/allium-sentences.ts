import { type AlliumsBefore, alliumBreakYears } from '@neckfall/engine';
import type { Speaker } from '@neckfall/words';

/** What a bed carried before a crop, and what that means for it; null where nothing stands against it. */
export function alliumSentence(before: AlliumsBefore | null, { say }: Speaker): string | null {
  if (before === null || before.finding === 'clear') return null;
  const bed = before.bed.name;
  if (before.finding === 'white-rot') return say('alliums.white-rot', { bed });
  const { year, yearsAgo } = before.last!;
  const { downyMildew, pinkRoot } = alliumBreakYears;
  return before.finding === 'short'
    ? say('alliums.short', { bed, year: String(year), ago: yearsAgo, wait: downyMildew, longest: pinkRoot })
    : say('alliums.roots', { bed, year: String(year), ago: yearsAgo, longest: pinkRoot });
}

/** The same where it is a warning: a bed long enough without needs none. */
export function alliumWarnings(before: AlliumsBefore | null, speaker: Speaker): string[] {
  const sentence = before?.finding === 'roots' ? null : alliumSentence(before, speaker);
  return sentence === null ? [] : [sentence];
}
