/**
 * A run of daily weather. Day 0 is 1 January of the first year; every year has 365 days
 * (29 February shares the 28th's place), so a date finds its day through its climate day.
 */
export type WeatherSeries = {
  days: number;
  /** Daily minimum and maximum of the air, °C. */
  tempMinC: Float64Array;
  tempMaxC: Float64Array;
  /** Rain and melted snow, mm a day. */
  rainMm: Float64Array;
  /** Solar radiation on the level, MJ m⁻² d⁻¹. */
  solarMJ: Float64Array;
};
