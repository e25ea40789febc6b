import { plantsPerM2, type Spacing, usualSpacing } from '../bed/index.ts';
import type { GardenPlanting } from '../garden/index.ts';
import { planFields } from '../season/index.ts';

type Said = Pick<GardenPlanting, 'rowDistanceCm' | 'plantDistanceCm' | 'plantsPerStation'>;

/** The spacing of a planting; what it leaves unsaid is as usual. */
export function spacingOf({ rowDistanceCm, plantDistanceCm, plantsPerStation }: Said): Spacing {
  return {
    rowCm: rowDistanceCm ?? usualSpacing.rowCm,
    plantCm: plantDistanceCm ?? usualSpacing.plantCm,
    perStation: plantsPerStation ?? usualSpacing.perStation,
  };
}

/** The density for which a season is worked out, plants per m²: that of the spacing, within what is worked out at all. */
export function densityOf(spacing: Spacing): number {
  const [least, most] = planFields.densityPerM2.range;
  return Math.min(most, Math.max(least, plantsPerM2(spacing)));
}
