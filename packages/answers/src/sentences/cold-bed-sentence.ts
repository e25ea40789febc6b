import type { ColdBed, DayNumber } from '@neckfall/engine';
import type { Speaker } from '@neckfall/words';

/** Why a bed cannot be sown or planted yet, or no longer, and from when it can. */
export function coldBedSentence(
  { soilC, isTurning, workableFrom }: ColdBed,
  startDay: DayNumber,
  { say, day, quantity }: Speaker,
): string {
  const values = { date: day(startDay), soil: quantity('temperature', soilC) };
  if (workableFrom === null) return say('season.cold-bed-always', values);
  return say(isTurning ? 'season.cold-bed-soon' : 'season.cold-bed', { ...values, from: day(workableFrom) });
}
