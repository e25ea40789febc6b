import { climateYearDays } from '../calendar/index.ts';
import { dailyCurve, type MonthlyClimate } from '../climate/index.ts';
import type { StorePlace } from '../garden/index.ts';

/** Of a store whose air the grower has measured. */
export type StoreAir = { tempC: number; humidityPct: number };

/** What was said of a store: a usual one by its name, or its own air the year round. */
export type StoreSaid = StorePlace | StoreAir;

/** Air of a store by day of a climate year, 365 values each; temperature °C, relative humidity %. */
export type StoreClimate = { tempC: Float64Array; humidityPct: Float64Array };

/**
 * How the air of a usual store follows the air outdoors: drawn toward `towardC` by all but `follows` of the way, never
 * outside `betweenC`, and by `lateDays` later. All memory, adjustable: no survey of household stores was found.
 */
type Damping = {
  /** Null: the mean temperature of the year. */
  towardC: number | null;
  follows: number;
  lateDays: number;
  betweenC: readonly [number, number];
  /** Null: of the water in the outdoor air at the temperature of the store. */
  humidityPct: number | null;
};

export const storeDamping: Readonly<Record<StorePlace, Damping>> = {
  cellar: { towardC: null, follows: 0.35, lateDays: 30, betweenC: [2, 30], humidityPct: 75 },
  shed: { towardC: null, follows: 0.9, lateDays: 3, betweenC: [-5, 40], humidityPct: null },
  garage: { towardC: 12, follows: 0.7, lateDays: 7, betweenC: [1, 40], humidityPct: null },
  kitchen: { towardC: 20, follows: 0.2, lateDays: 0, betweenC: [16, 32], humidityPct: 55 },
  fridge: { towardC: 4, follows: 0, lateDays: 0, betweenC: [4, 4], humidityPct: 80 },
};

/** The air of a store through the year of a climate. */
export function storeClimateOf(climate: MonthlyClimate, said: StoreSaid): StoreClimate {
  const tempC = new Float64Array(climateYearDays);
  const humidityPct = new Float64Array(climateYearDays);
  if (typeof said !== 'string') {
    tempC.fill(said.tempC);
    humidityPct.fill(said.humidityPct);
    return { tempC, humidityPct };
  }
  const { towardC, follows, lateDays, betweenC, humidityPct: held } = storeDamping[said];
  const outdoorC = dailyCurve(climate.tempMeanC, new Float64Array(climateYearDays));
  const outdoorPct = dailyCurve(climate.relativeHumidityPct, new Float64Array(climateYearDays));
  const centre = towardC ?? outdoorC.reduce((sum, value) => sum + value, 0) / climateYearDays;
  for (let day = 0; day < climateYearDays; day++) {
    const from = (day - lateDays + climateYearDays) % climateYearDays;
    const drawn = centre + follows * (outdoorC[from] - centre);
    tempC[day] = Math.min(betweenC[1], Math.max(betweenC[0], drawn));
    humidityPct[day] = held ?? outdoorPct[day];
  }
  return { tempC, humidityPct };
}
