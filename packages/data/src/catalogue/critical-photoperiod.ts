import { dayLength, dayNumber, defaultPlantValues, type OnionType, typeParameters } from '@neckfall/engine';
import type { PublishedNeed } from './cultivar.ts';

/** How far beyond the bounds of its type a need may lie and still be believed, h. */
const beyondTypeH = 0.5;

/**
 * A published need as photoperiod to civil twilight: the type's own moved into what was published, in tenths of an hour;
 * null where it is there already, and where the need lies so far out that the type is the better guess.
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

function photoperiodOf(lengthH: number, { light, latitudeDeg }: PublishedNeed): number {
  return light === 'sun-up' && latitudeDeg !== null ? withTwilight(lengthH, latitudeDeg) : lengthH;
}

/**
 * Hours from civil dawn to civil dusk on the day, between midwinter and midsummer, when the sun is up for `sunUpH`. Where
 * it is never up so long, or never so short, the twilight of midsummer or midwinter is added.
 */
export function withTwilight(sunUpH: number, latitudeDeg: number): number {
  const north = Math.abs(latitudeDeg);
  let low = dayNumber(2026, 12, 21);
  let high = dayNumber(2027, 6, 21);
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if (dayLength(north, 0, middle, 'sun-up').hours < sunUpH) low = middle;
    else high = middle;
  }
  return sunUpH + dayLength(north, 0, high, 'civil').hours - dayLength(north, 0, high, 'sun-up').hours;
}
