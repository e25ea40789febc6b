import type { LearntSeason, LearntShift } from '@neckfall/engine';
import type { Speaker } from '@neckfall/words';

/** A day length is told by steps of so many minutes. */
const stepMinutes = 5;

/**
 * What one parameter of a season's plants has shown itself to be; null within what is not known of it: nothing is said
 * that one more look may undo.
 *
 * @param tellsTops whether what it makes of the tops is told with it
 */
export function shiftSentence(
  { parameter, usual, now, sd, neckFallDays }: LearntShift,
  { say }: Speaker,
  tellsTops = true,
): string | null {
  const shift = now - usual;
  if (Math.abs(shift) <= sd) return null;
  const days = tellsTops ? Math.round(Math.abs(neckFallDays ?? 0)) : 0;
  const effect = {
    way: shift > 0 ? 'more' : 'less',
    tops: days === 0 ? 'same' : (neckFallDays ?? 0) > 0 ? 'later' : 'earlier',
    days,
  };
  if (parameter === 'criticalH') {
    const minutes = stepMinutes * Math.round((60 * Math.abs(shift)) / stepMinutes);
    return minutes === 0 ? null : say('learnt.criticalH', { ...effect, minutes });
  }
  const percent = Math.round((100 * Math.abs(shift)) / usual);
  return percent === 0 ? null : say(`learnt.${parameter}`, { ...effect, percent });
}

/** What was learnt of a season's plants, most telling for neck fall first; empty where nothing stands out. */
export function learntSentences(
  { learnt }: Pick<LearntSeason, 'learnt'>,
  speaker: Speaker,
  tellsTops: boolean,
): string[] {
  const weight = ({ neckFallDays }: LearntShift) => Math.abs(neckFallDays ?? 0);
  return [...learnt]
    .sort((a, b) => weight(b) - weight(a))
    .map((shift) => shiftSentence(shift, speaker, tellsTops))
    .filter((sentence) => sentence !== null);
}
