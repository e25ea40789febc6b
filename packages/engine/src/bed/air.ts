/*
 * State of the air for evaporation. Source of every equation here: FAO Irrigation and Drainage Paper 56
 * (Allen, Pereira, Raes & Smith 1998), chapter 3.
 */

/** Atmospheric pressure, kPa, at an elevation in m (Eq. 7). */
export function atmosphericPressure(elevationM: number): number {
  return 101.3 * ((293 - 0.0065 * elevationM) / 293) ** 5.26;
}

/** Psychrometric constant, kPa °C⁻¹, at an elevation in m (Eq. 8). */
export function psychrometricConstant(elevationM: number): number {
  return 0.665e-3 * atmosphericPressure(elevationM);
}

/** Saturation vapour pressure e°, kPa, at an air temperature in °C (Eq. 11). */
export function saturationVapourPressure(tempC: number): number {
  return 0.6108 * Math.exp((17.27 * tempC) / (tempC + 237.3));
}

/** Mean saturation vapour pressure of a day, month or ten days, kPa (Eq. 12). */
export function meanSaturationVapourPressure(tempMinC: number, tempMaxC: number): number {
  return (saturationVapourPressure(tempMinC) + saturationVapourPressure(tempMaxC)) / 2;
}

/** Slope of the saturation curve, kPa °C⁻¹ (Eq. 13). */
export function saturationSlope(tempC: number): number {
  const warmth = tempC + 237.3;
  return (4098 * saturationVapourPressure(tempC)) / (warmth * warmth);
}

/** Actual vapour pressure, kPa, from the day's lowest and highest relative humidity, % (Eq. 17). */
export function vapourPressureFromHumidityRange(
  tempMinC: number,
  tempMaxC: number,
  humidityMinPct: number,
  humidityMaxPct: number,
): number {
  return (
    (saturationVapourPressure(tempMinC) * humidityMaxPct +
      saturationVapourPressure(tempMaxC) * humidityMinPct) /
    200
  );
}

/** Lowest relative humidity of a day, %, by its mean (Eq. 10 and 19): the air holds as much vapour in its warmest hour. */
export function lowestHumidityPct(tempMinC: number, tempMaxC: number, humidityMeanPct: number): number {
  return (
    (meanSaturationVapourPressure(tempMinC, tempMaxC) * humidityMeanPct) / saturationVapourPressure(tempMaxC)
  );
}

/** Wind at 2 m, m/s, from wind measured at another height in m over short grass (Eq. 47). */
export function windAt2m(windMs: number, heightM: number): number {
  return (windMs * 4.87) / Math.log(67.8 * heightM - 5.42);
}
