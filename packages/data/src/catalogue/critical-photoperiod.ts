import { defaultPlantValues, type OnionType, photoperiodOfSunUp, typeParameters } from '@neckfall/engine';
import type { PublishedNeed } from './cultivar.ts';

/** How far beyond the bounds of its type a need may lie and still be believed, h. */
const beyondTypeH = 0.5;

/**
 * A published need as the photoperiod, to civil twilight, from which bulbs are induced: the type's own moved into what was
 * published, in tenths of an hour; null where it is there already, and where the need lies so far out that the type is
 * the better guess.
 */
export function criticalPhotoperiodH(need: PublishedNeed, type: OnionType): number | null {
  // bulbs seen in a field only say that the need was met some time before
  if (need.light === 'onset-seen') return null;
  const { low, high } = typeParameters.criticalPhotoperiodH[type];
  const fromH = photoperiodOf(need.fromH, need);
  const toH = photoperiodOf(need.toH, need);
  if (toH < low - beyondTypeH || fromH > high + beyondTypeH) return null;
  const ownH = defaultPlantValues.types[type].criticalPhotoperiodH;
  const criticalH = Math.round(10 * Math.max(fromH, Math.min(toH, ownH))) / 10;
  return Math.abs(criticalH - ownH) < 0.1 ? null : criticalH;
}

/** Published is the length at which bulbs formed in earnest: they begin to half the way down the response. */
function photoperiodOf(lengthH: number, { light, latitudeDeg }: PublishedNeed): number {
  const withTwilightH =
    light === 'sun-up' && latitudeDeg !== null ? photoperiodOfSunUp(lengthH, latitudeDeg) : lengthH;
  return withTwilightH - defaultPlantValues.growth.photoperiodRampH / 2;
}
