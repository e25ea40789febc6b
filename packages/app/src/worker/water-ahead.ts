import { type DayNumber, type TendedCrop, type WaterAnswer, waterOf } from '@neckfall/engine';
import { type CropUnderWayAsked, tendedCrop } from './crop-under-way.ts';

/** What a crop asks of water, and what is told of it beside that. */
export type WaterAhead = { water: WaterAnswer; liftedOn: DayNumber | null };

export function waterAhead(asked: CropUnderWayAsked & { ground: TendedCrop['ground'] }): WaterAhead {
  const crop = tendedCrop(asked);
  return { water: waterOf(crop, { efficiency: null, days: false }), liftedOn: crop.liftedOn };
}
