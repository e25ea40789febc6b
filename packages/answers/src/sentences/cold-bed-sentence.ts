import type { ColdBed, DayNumber } from '@neckfall/engine';
import type { Speaker } from '@neckfall/words';

/** Why a bed cannot be sown or planted yet, and from when it can. */
export function coldBedSentence(
  { soilC, workableFrom }: ColdBed,
  startDay: DayNumber,
  { say, day, quantity }: Speaker,
): string {
  const values = { date: day(startDay), soil: quantity('temperature', soilC) };
  return workableFrom === null
    ? say('season.cold-bed-always', values)
    : say('season.cold-bed', { ...values, from: day(workableFrom) });
}
