import { clamp } from '../math/index.ts';

/*
 * Crop coefficients: evaporation of a crop against that of the reference grass.
 * Source of every equation here: FAO Irrigation and Drainage Paper 56 (Allen, Pereira, Raes & Smith 1998).
 */

/** A coefficient by stages of growth, and the days that each stage lasts. */
export type CropCurve = {
  initial: number;
  middle: number;
  end: number;
  /** Initial stage, development, middle and late stage, days. */
  days: readonly [number, number, number, number];
};

/** Coefficient on day 1, 2, … from planting: level, then straight between the stages (Eq. 66). */
export function coefficientOnDay({ initial, middle, end, days }: CropCurve, day: number): number {
  const [initialDays, development, mid, late] = days;
  if (day <= initialDays) return initial;
  const grown = initialDays + development;
  if (day <= grown) return initial + ((day - initialDays) / development) * (middle - initial);
  const ripens = grown + mid;
  if (day <= ripens) return middle;
  return middle + Math.min(1, (day - ripens) / late) * (end - middle);
}

/**
 * What wind and dry air add to a coefficient, before the crop's height has its part: the bracket of Eq. 62, 70 and 72,
 * with wind at 2 m within 1…6 m/s and the day's lowest humidity within 20…80 %.
 */
export function climateTerm(wind2mMs: number, humidityMinPct: number): number {
  return 0.04 * (clamp(wind2mMs, 1, 6) - 2) - 0.004 * (clamp(humidityMinPct, 20, 80) - 45);
}

/** The part that the height of the crop, m, has in it (Eq. 62, 70 and 72). */
export function heightFactor(heightM: number): number {
  return (heightM / 3) ** 0.3;
}

/** Basal coefficients from this up follow the climate; smaller ones do not (Eq. 70). */
const adjustedFrom = 0.45;

/** Basal coefficient Kcb of the table at another wind and humidity than 2 m/s and 45 % (Eq. 70). */
export function basalInClimate(basal: number, term: number, height: number): number {
  return basal >= adjustedFrom ? basal + term * height : basal;
}

/** The most that wet ground and crop together evaporate, Kc max (Eq. 72). */
export function largestCoefficient(basal: number, term: number, height: number): number {
  const wet = 1.2 + term * height;
  const overCrop = basal + 0.05;
  return wet > overCrop ? wet : overCrop;
}
