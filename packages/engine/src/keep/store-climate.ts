import { saturationVapourPressure } from '../bed/index.ts';
import { climateDayOf, climateYearDays, parseDay } from '../calendar/index.ts';
import { dailyCurve, type MonthlyClimate } from '../climate/index.ts';
import type { StorePlace, StoreReading } from '../garden/index.ts';
import { clamp, mean } from '../math/index.ts';
import { type DayReading, drawnTo, type StorePrior } from './store-readings.ts';
import type { StoreSaid } from './store-said.ts';

/** Air of a store by day of a climate year, 365 values each; temperature °C, relative humidity %. */
export type StoreClimate = { tempC: Float64Array; humidityPct: Float64Array };

/**
 * How the air of a usual store follows the air outdoors. All memory, adjustable: no survey of household stores was
 * found.
 */
type Damping = {
  /** What the store is drawn toward, °C; null: the mean of the year outdoors. */
  towardC: number | null;
  /** Of the swing outdoors about that, the share that comes in: while it is colder there, and while it is warmer. */
  follows: readonly [colder: number, warmer: number];
  lateDays: number;
  warmerByC: number;
  /** Never colder than this; null: as cold as it comes. */
  leastC: number | null;
  /** Water that people and cooking bring into the air, kPa of vapour. */
  vapourKPa: number;
  /** Damp of walls or of what else is kept there, %, and its weight against the water in the air from outdoors, 0…1. */
  heldPct: number;
  heldShare: number;
};

const airOnly = { vapourKPa: 0, heldPct: 0, heldShare: 0 };

const storeDamping: Readonly<Record<StorePlace, Damping>> = {
  cellar: {
    towardC: null,
    follows: [0.35, 0.35],
    lateDays: 30,
    warmerByC: 0,
    leastC: 1,
    vapourKPa: 0,
    heldPct: 78,
    heldShare: 0.6,
  },
  shed: { towardC: null, follows: [0.95, 0.95], lateDays: 2, warmerByC: 0.5, leastC: null, ...airOnly },
  garage: { towardC: null, follows: [0.75, 0.75], lateDays: 6, warmerByC: 2, leastC: null, ...airOnly },
  kitchen: {
    towardC: 20,
    follows: [0.1, 0.95],
    lateDays: 0,
    warmerByC: 0,
    leastC: null,
    vapourKPa: 0.3,
    heldPct: 0,
    heldShare: 0,
  },
  fridge: {
    towardC: 4,
    follows: [0, 0],
    lateDays: 0,
    warmerByC: 0,
    leastC: null,
    vapourKPa: 0,
    heldPct: 80,
    heldShare: 1,
  },
};

/** Air indoors is never as dry or as wet as it could be, % (memory, adjustable). */
const humidityBounds = [15, 98] as const;

/** Household stores differ from the usual, and a reading from the days about it, °C and % relative humidity; of swings, shares. */
const tempPrior: StorePrior = { level: 4, swing: 0.4, reading: 2 };
const humidityPrior: StorePrior = { level: 12, swing: 0.3, reading: 8 };

/** The air of a store through the year of a climate. */
export function storeClimateOf(climate: MonthlyClimate, said: StoreSaid): StoreClimate {
  if (typeof said !== 'string' && 'tempC' in said) {
    const { tempC, humidityPct } = said;
    return { tempC: everyDay(() => tempC), humidityPct: everyDay(() => humidityPct) };
  }
  const { place, readings } = typeof said === 'string' ? { place: said, readings: [] } : said;
  const damping = storeDamping[place];
  const outdoorC = dailyCurve(climate.tempMeanC, new Float64Array(climateYearDays));
  const outdoorPct = dailyCurve(climate.relativeHumidityPct, new Float64Array(climateYearDays));
  const usualC = usualTempOf(outdoorC, damping);
  const tempC = drawnTo(usualC, readingsOf(readings, 'tempC'), tempPrior);
  // the same water in warmer air makes it drier
  const usualPct = everyDay((day) => indoorPct(outdoorC[day], outdoorPct[day], tempC[day], damping));
  const humidityPct = drawnTo(usualPct, readingsOf(readings, 'humidityPct'), humidityPrior);
  return { tempC, humidityPct: humidityPct.map((value) => clamp(value, 0, 100)) };
}

function everyDay(of: (day: number) => number): Float64Array {
  return Float64Array.from({ length: climateYearDays }, (_, day) => of(day));
}

function readingsOf(readings: readonly StoreReading[], field: 'tempC' | 'humidityPct'): DayReading[] {
  return readings.flatMap(({ date, [field]: value }) => {
    const day = parseDay(date);
    return day === null || value === null ? [] : [{ day: climateDayOf(day), value }];
  });
}

function usualTempOf(outdoorC: Float64Array, damping: Damping): Float64Array {
  const centre = damping.towardC ?? mean(outdoorC);
  return everyDay((day) => {
    const from = (day - damping.lateDays + climateYearDays) % climateYearDays;
    const swing = outdoorC[from] - centre;
    const drawn = centre + damping.follows[swing < 0 ? 0 : 1] * swing + damping.warmerByC;
    return Math.max(drawn, damping.leastC ?? drawn);
  });
}

/** The water of the air outdoors, and what is added indoors, at the temperature of the store (FAO-56, Eq. 10 and 11). */
function indoorPct(outdoorC: number, outdoorPct: number, storeC: number, damping: Damping): number {
  const vapour = (saturationVapourPressure(outdoorC) * outdoorPct) / 100 + damping.vapourKPa;
  const [low, high] = humidityBounds;
  const ofAir = clamp((100 * vapour) / saturationVapourPressure(storeC), low, high);
  return ofAir + damping.heldShare * (damping.heldPct - ofAir);
}
