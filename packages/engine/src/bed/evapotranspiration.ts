import { clamp } from '../math/index.ts';
import { meanSaturationVapourPressure, saturationSlope } from './air.ts';

/*
 * Reference evapotranspiration ET₀ of short grass, mm a day.
 * Source: FAO Irrigation and Drainage Paper 56 (Allen, Pereira, Raes & Smith 1998), chapters 3 and 4.
 */

/** mm of water evaporated by 1 MJ m⁻² (inverse of the latent heat 2.45 MJ kg⁻¹; FAO-56 Eq. 20). */
export const mmPerMJ = 0.408;

/** Stefan–Boltzmann constant, MJ K⁻⁴ m⁻² d⁻¹, and 0 °C in K as FAO-56 Eq. 39 prints them. */
const stefanBoltzmann = 4.903e-9;
const zeroCInK = 273.16;

/** Albedo of the reference grass (Eq. 38). */
const grassAlbedo = 0.23;

/** Net shortwave radiation of the reference grass, MJ m⁻² d⁻¹ (Eq. 38). */
export function netShortwave(solarMJ: number): number {
  return (1 - grassAlbedo) * solarMJ;
}

/**
 * Net longwave radiation lost by the ground, MJ m⁻² d⁻¹ (Eq. 39). Rs/Rso is at most 1; the lower limit 0.3
 * (memory: ASCE-EWRI 2005) keeps very dark days from gaining longwave, and 0.5 stands in where the sun never
 * rises (an assumption; FAO-56 names 0.4–0.6 for humid nights — memory).
 */
export function netLongwave(
  tempMinC: number,
  tempMaxC: number,
  vapourPressureKPa: number,
  solarMJ: number,
  clearSkyMJ: number,
): number {
  const clearness = clearSkyMJ > 0 ? clamp(solarMJ / clearSkyMJ, 0.3, 1) : 0.5;
  const coldSquared = (tempMinC + zeroCInK) * (tempMinC + zeroCInK);
  const warmSquared = (tempMaxC + zeroCInK) * (tempMaxC + zeroCInK);
  return (
    ((stefanBoltzmann * (coldSquared * coldSquared + warmSquared * warmSquared)) / 2) *
    (0.34 - 0.14 * Math.sqrt(vapourPressureKPa)) *
    (1.35 * clearness - 0.35)
  );
}

/** Heat flowing into the soil in a month, MJ m⁻² d⁻¹, from the mean temperatures of its neighbours (Eq. 43). */
export function monthlySoilHeat(previousMonthC: number, nextMonthC: number): number {
  return 0.07 * (nextMonthC - previousMonthC);
}

/**
 * FAO Penman–Monteith ET₀, mm a day (Eq. 6), never below 0.
 * @param saturationKPa mean of e° at the lowest and highest temperature
 * @param availableMJ net radiation minus soil heat flux, MJ m⁻² d⁻¹
 * @param psychrometric kPa °C⁻¹
 */
export function penmanMonteith(
  tempMeanC: number,
  saturationKPa: number,
  vapourPressureKPa: number,
  availableMJ: number,
  wind2mMs: number,
  psychrometric: number,
): number {
  const slope = saturationSlope(tempMeanC);
  const et =
    (mmPerMJ * slope * availableMJ +
      ((psychrometric * 900) / (tempMeanC + 273)) * wind2mMs * (saturationKPa - vapourPressureKPa)) /
    (slope + psychrometric * (1 + 0.34 * wind2mMs));
  return Math.max(et, 0);
}

/**
 * ET₀ of one day, mm, for loops over many days: scalars only, three exponentials. Soil heat flux is taken
 * as zero over a day (Eq. 42).
 * @param solarMJ solar radiation on the level, MJ m⁻² d⁻¹
 * @param clearSkyMJ the same under a clear sky
 * @param humidityPct mean relative humidity (Eq. 19), a monthly mean will do
 * @param wind2mMs wind at 2 m, a monthly mean will do
 * @param psychrometric kPa °C⁻¹, fixed for a place
 */
export function dailyReferenceEt(
  tempMinC: number,
  tempMaxC: number,
  solarMJ: number,
  clearSkyMJ: number,
  humidityPct: number,
  wind2mMs: number,
  psychrometric: number,
): number {
  const saturation = meanSaturationVapourPressure(tempMinC, tempMaxC);
  const vapour = (saturation * humidityPct) / 100;
  const net = netShortwave(solarMJ) - netLongwave(tempMinC, tempMaxC, vapour, solarMJ, clearSkyMJ);
  return penmanMonteith((tempMinC + tempMaxC) / 2, saturation, vapour, net, wind2mMs, psychrometric);
}

/** Hargreaves ET₀, mm a day, where only temperatures are known (Eq. 52). */
export function hargreavesEt(tempMinC: number, tempMaxC: number, extraterrestrialMJ: number): number {
  const range = tempMaxC - tempMinC;
  const warmth = (tempMinC + tempMaxC) / 2 + 17.8;
  return range > 0 && warmth > 0 ? 0.0023 * warmth * Math.sqrt(range) * mmPerMJ * extraterrestrialMJ : 0;
}
