import type { DayOfYear } from '../calendar/index.ts';
import { acosClamped, degreesToRadians } from '../math/index.ts';

/*
 * Daily solar radiation on the level, MJ m⁻² d⁻¹.
 * Source: FAO Irrigation and Drainage Paper 56 (Allen, Pereira, Raes & Smith 1998), chapter 3. Its simple sun
 * serves evaporation only; day lengths for plants and people come from day-length.ts.
 */

/** Solar constant, MJ m⁻² min⁻¹. */
const solarConstant = 0.082;

/** Solar declination, rad (Eq. 24). */
function declinationFao(dayOfYear: DayOfYear): number {
  return 0.409 * Math.sin(((2 * Math.PI) / 365) * dayOfYear - 1.39);
}

/** Hour angle of sunset, rad (Eq. 25): 0 in polar night, π in polar day. */
function sunsetHourAngle(latitudeDeg: number, dayOfYear: DayOfYear): number {
  return acosClamped(-Math.tan(latitudeDeg * degreesToRadians) * Math.tan(declinationFao(dayOfYear)));
}

/** Radiation above the air, Ra, MJ m⁻² d⁻¹ (Eq. 21, 23). Day of the year 1…366. */
export function extraterrestrialRadiation(latitudeDeg: number, dayOfYear: DayOfYear): number {
  const latitude = latitudeDeg * degreesToRadians;
  const declination = declinationFao(dayOfYear);
  const sunset = sunsetHourAngle(latitudeDeg, dayOfYear);
  const inverseDistance = 1 + 0.033 * Math.cos(((2 * Math.PI) / 365) * dayOfYear);
  const perDay = ((24 * 60) / Math.PI) * solarConstant * inverseDistance;
  const ra =
    perDay *
    (sunset * Math.sin(latitude) * Math.sin(declination) +
      Math.cos(latitude) * Math.cos(declination) * Math.sin(sunset));
  // Rounding in polar night can leave a trace below zero.
  return Math.max(ra, 0);
}

/** Longest possible sunshine N, h (Eq. 34): the sun's centre, without refraction. Day of the year 1…366. */
export function daylightHoursFao(latitudeDeg: number, dayOfYear: DayOfYear): number {
  return (24 / Math.PI) * sunsetHourAngle(latitudeDeg, dayOfYear);
}

/** Solar radiation Rs from the share of possible sunshine 0…1 (Ångström, Eq. 35 with 0.25 and 0.50). */
export function solarRadiation(extraterrestrialMJ: number, sunshineFraction: number): number {
  return (0.25 + 0.5 * sunshineFraction) * extraterrestrialMJ;
}

/** Solar radiation under a clear sky, Rso (Eq. 37). */
export function clearSkyRadiation(extraterrestrialMJ: number, elevationM: number): number {
  return (0.75 + 2e-5 * elevationM) * extraterrestrialMJ;
}

/**
 * Solar radiation from the day's temperature range, where sunshine is unknown (Hargreaves, Eq. 50).
 * @param kRs °C⁻⁰·⁵: 0.16 inland (FAO-56 example 20), 0.19 at coasts (memory: FAO-56)
 */
export function solarRadiationFromRange(extraterrestrialMJ: number, tempRangeC: number, kRs = 0.16): number {
  return kRs * Math.sqrt(Math.max(tempRangeC, 0)) * extraterrestrialMJ;
}
