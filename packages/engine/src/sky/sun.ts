import { degreesToRadians } from '../math/index.ts';

/**
 * Sine of the sun's apparent declination. The sun is within about 0.01° for some centuries around 2000.
 * Source: Meeus 1998, Astronomical Algorithms, 2nd ed., ch. 25, in the form of NOAA's solar calculator.
 * The 3M term and what follows the centre (aberration, nutation, obliquity) are from memory; the tests hold
 * the whole against two ephemerides.
 * @param day days since 1970-01-01T00:00 UTC, with fraction. The minute between UTC and dynamical time moves
 * the sun by 0.0007° and is left out.
 */
export function sinDeclination(day: number): number {
  // Julian centuries since 2000-01-01T12:00.
  const t = (day - 10957.5) / 36525;
  const meanLongitude = 280.46646 + t * (36000.76983 + t * 0.0003032);
  const anomaly = (357.52911 + t * (35999.05029 - t * 0.0001537)) * degreesToRadians;
  // sin 2M and sin 3M from sin M and cos M: this runs hundreds of times for a place.
  const sinM = Math.sin(anomaly);
  const cosM = Math.cos(anomaly);
  const centre =
    (1.914602 - t * (0.004817 + t * 0.000014)) * sinM +
    (0.019993 - t * 0.000101) * 2 * sinM * cosM +
    0.000289 * sinM * (3 - 4 * sinM * sinM);
  const node = (125.04 - 1934.136 * t) * degreesToRadians;
  const longitude = meanLongitude + centre - 0.00569 - 0.00478 * Math.sin(node);
  const obliquity = 23.4392911 - t * (0.0130042 + t * (1.64e-7 - t * 5.036e-7)) + 0.00256 * Math.cos(node);
  return Math.sin(obliquity * degreesToRadians) * Math.sin(longitude * degreesToRadians);
}
