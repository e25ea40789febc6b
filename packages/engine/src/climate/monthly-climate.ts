/** Monthly climate of one point on land: twelve values a field, January first. */
export type MonthlyClimate = {
  latitudeDeg: number;
  longitudeDeg: number;
  elevationM: number;
  /** Mean temperature, °C. */
  tempMeanC: Float64Array;
  /** Mean daily maximum minus mean daily minimum, °C. */
  tempRangeC: Float64Array;
  /** Rain and melted snow, mm a month. */
  rainMm: Float64Array;
  /** Days with at least 0.1 mm, a month. */
  wetDays: Float64Array;
  /** Mean relative humidity, %. */
  relativeHumidityPct: Float64Array;
  /** Sunshine, % of the longest possible. */
  sunshinePct: Float64Array;
  /** Mean wind at 10 m, m/s. */
  wind10mMs: Float64Array;
  /** Nights below 0 °C, a month. */
  frostNights: Float64Array;
  /** Standard deviation of the daily minimum about its monthly mean, °C, all years together. */
  minTempSdC: Float64Array;
};
