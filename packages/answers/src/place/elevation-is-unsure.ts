import type { Place } from '@neckfall/data';
import { elevationSpreadWarningM } from '@neckfall/engine';

/** A guessed elevation where the ground nearby lies at very different heights. */
export function elevationIsUnsure({ elevationFrom, climate }: Place): boolean {
  const guessed = elevationFrom === 'node' || elevationFrom === 'near-town';
  return guessed && climate.nodeElevationSpreadM > elevationSpreadWarningM;
}
