/** Days of weather one after the other; null where nothing was measured. All lists are as long as there are days. */
export type WeatherDaysProps = {
  /** px; see FitWidth. */
  width: number;
  /** What the picture says, for those who don't see it. */
  summary: string;
  firstDay: number;
  lowC: readonly (number | null)[];
  highC: readonly (number | null)[];
  rainMm: readonly (number | null)[];
  /** Mean lowest and highest of each day here. */
  usualLowC: readonly number[];
  usualHighC: readonly number[];
  /** Days from this one on are forecast; null: none. */
  forecast: { from: number; text: string } | null;
  /** Lines across, from the lowest up, each with what it says. */
  levels: readonly { tempC: number; text: string; isFrost: boolean }[];
  /** Short names, January first. */
  months: readonly string[];
  rainText: string;
  /** What the band of the days is, and what lies behind it. */
  measuredText: string;
  usualText: string;
};
