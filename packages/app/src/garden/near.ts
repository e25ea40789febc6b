import type { GardenPlace } from '@neckfall/engine';
import type { Asked } from '../address/address-form.ts';

/** Whether a place of a garden is the point of an address. */
export function isAt(place: GardenPlace, at: Asked['at']): boolean {
  return (
    isNear(place.latitudeDeg, at?.latitudeDeg ?? 0, nearDeg) &&
    isNear(place.longitudeDeg, at?.longitudeDeg ?? 0, nearDeg)
  );
}

/** Addresses hold four decimals of a degree. */
const nearDeg = 0.0001;

export function isNear(a: number | null, b: number | null, within: number): boolean {
  return a === null || b === null ? a === b : Math.abs(a - b) <= within;
}
