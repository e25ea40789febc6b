import { elevationSpreadWarningM } from '@neckfall/engine';
import type { Place } from './place.ts';

/** A guessed elevation where the ground nearby lies at very different heights. */
export function elevationIsUnsure({ elevationFrom, climate }: Place): boolean {
  const guessed = elevationFrom === 'node' || elevationFrom === 'near-town';
  return guessed && climate.nodeElevationSpreadM > elevationSpreadWarningM;
}
