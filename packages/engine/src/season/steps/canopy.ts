import { areaUpTo, greenShare, interceptedShare, youngLeafArea } from '../../plant/index.ts';
import type { Crop } from '../crop.ts';
import type { PlantState } from '../plant-state.ts';

/** The leaves of a day. */
export type Canopy = {
  /** What the standing leaves would reach, cm² a plant. */
  standingCm2: number;
  /** Leaf area index, m² m⁻². */
  leafAreaIndex: number;
  /** Share of the light that they catch. */
  intercepted: number;
};

/** What a plant's leaves are worked out from. */
export type Leafy = Pick<PlantState, 'leaves' | 'green' | 'shootG' | 'ripening'>;

/** A young plant's leaves are no larger than its mass can carry. */
export function canopyOf(plant: Leafy, { crop }: { crop: Crop }): Canopy {
  const standingCm2 =
    areaUpTo(crop.areaTotals, plant.leaves) - areaUpTo(crop.areaTotals, plant.leaves - plant.green);
  const areaCm2 = Math.min(youngLeafArea(plant.shootG), standingCm2) * greenShare(plant.ripening);
  const leafAreaIndex = areaCm2 * crop.standPerM2 * 1e-4;
  return {
    standingCm2,
    leafAreaIndex,
    intercepted: interceptedShare(crop.growth.extinction * leafAreaIndex),
  };
}
