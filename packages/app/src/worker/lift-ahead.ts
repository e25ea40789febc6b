import { type DayNumber, type LiftAdvice, liftAdvice, type TendedCrop } from '@neckfall/engine';
import { type CropUnderWayAsked, tendedCrop } from './crop-under-way.ts';

/** Whether a crop is to be lifted; null advice where no bulbs come. */
export type LiftAhead = { advice: LiftAdvice | null; liftedOn: DayNumber | null };

export function liftAhead(asked: CropUnderWayAsked & { ground: TendedCrop['ground'] }): LiftAhead {
  const crop = tendedCrop(asked);
  return { advice: liftAdvice(crop), liftedOn: crop.liftedOn };
}
