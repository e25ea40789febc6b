import type { DayNumber } from '../calendar/index.ts';
import { degreesToRadians } from '../math/index.ts';
import { sinDeclination } from './sun.ts';

/**
 * What counts as day.
 * `sun-up`: any part of the sun above the horizon, refraction included — what growers, packets and almanacs
 * print. `civil`: sun at most 6° below the horizon — the light a plant is taken to count.
 */
export type DayLengthConvention = 'sun-up' | 'civil';

/** Hours of day, with why there are 24 or none. */
export type DayLength = { hours: number; kind: 'rises-and-sets' | 'polar-day' | 'polar-night' };

/**
 * Altitude of the sun's centre at which day begins and ends, degrees. −0.833: 34′ refraction and 16′ half
 * disc (US Naval Observatory, US Weather Service); −6: civil twilight (the same).
 */
const altitudes: Readonly<Record<DayLengthConvention, number>> = { 'sun-up': -0.833, civil: -6 };

/**
 * Day length at a place on a day (day number, see calendar), for the sun of the middle of the local day.
 * @param latitudeDeg −90…90
 * @param longitudeDeg −180…180, east positive
 * @throws RangeError naming a value outside these limits
 *
 * @example
 * ```js
 * dayLength(45.76, 4.84, parseDay('2027-06-21'), 'sun-up').hours; // 15.7
 * ```
 */
export function dayLength(
  latitudeDeg: number,
  longitudeDeg: number,
  day: DayNumber,
  convention: DayLengthConvention,
): DayLength {
  const out = new Float64Array(1);
  fillDayLengths(latitudeDeg, longitudeDeg, day, convention, out);
  const hours = out[0];
  return { hours, kind: hours === 24 ? 'polar-day' : hours === 0 ? 'polar-night' : 'rises-and-sets' };
}

/** Hours of day on consecutive days from `firstDay` on, 24 in polar day and 0 in polar night; see {@link dayLength}. */
export function fillDayLengths(
  latitudeDeg: number,
  longitudeDeg: number,
  firstDay: DayNumber,
  convention: DayLengthConvention,
  out: Float64Array,
): void {
  fillHoursAbove(altitudes[convention], latitudeDeg, longitudeDeg, firstDay, out);
}

/** Hours a day that the sun's centre is above an altitude in degrees; see {@link fillDayLengths}. */
export function fillHoursAbove(
  altitudeDeg: number,
  latitudeDeg: number,
  longitudeDeg: number,
  firstDay: DayNumber,
  out: Float64Array,
): void {
  requireWithin('latitude', latitudeDeg, 90);
  requireWithin('longitude', longitudeDeg, 180);
  if (!Number.isFinite(firstDay)) throw new RangeError(`day must be a day number, got ${firstDay}`);
  const sinAltitude = Math.sin(altitudeDeg * degreesToRadians);
  const sinLatitude = Math.sin(latitudeDeg * degreesToRadians);
  const cosLatitude = Math.cos(latitudeDeg * degreesToRadians);
  const noon = firstDay + 0.5 - longitudeDeg / 360;
  for (let i = 0; i < out.length; i++) {
    const sinDelta = sinDeclination(noon + i);
    const cosHourAngle =
      (sinAltitude - sinLatitude * sinDelta) / (cosLatitude * Math.sqrt(1 - sinDelta * sinDelta));
    out[i] = cosHourAngle <= -1 ? 24 : cosHourAngle >= 1 ? 0 : (24 / Math.PI) * Math.acos(cosHourAngle);
  }
}

function requireWithin(name: string, degrees: number, limit: number): void {
  if (!(Math.abs(degrees) <= limit)) {
    throw new RangeError(`${name} must be −${limit}…${limit} degrees, got ${degrees}`);
  }
}
