import { dailyReferenceEt, psychrometricConstant, windAt2m } from '../bed/index.ts';
import { climateYearDays, monthOfClimateDay } from '../calendar/index.ts';
import type { MonthlyClimate } from '../climate/index.ts';
import {
  type Cover,
  coldColumn,
  covers,
  degreesColumn,
  type GrowthValues,
  growthTemperatureFactor,
  rampColumn,
  usedLightMJ,
} from '../plant/index.ts';
import { clearSkyRadiation, extraterrestrialRadiation } from '../sky/index.ts';
import type { WeatherSeries } from '../weather/index.ts';

/**
 * What a plant feels of the weather, day by day, worked out once for all plans at a place.
 * Every array has the length and the days of the weather it was made from.
 */
export type Drivers = {
  days: number;
  tempMeanC: Float64Array;
  tempMinC: Float64Array;
  rainMm: Float64Array;
  /** Smoothed share of days with rain. */
  wetness: Float64Array;
  /** Thermal time for leaves and age (°C d). */
  leafTT: Float64Array;
  /** Thermal time above 3 °C, of leaf life. */
  lifeTT: Float64Array;
  /** Thermal time of young growth. */
  growthTT: Float64Array;
  /** Thermal time of the seedbed at sowing depth. */
  soilTT: Float64Array;
  soilMeanC: Float64Array;
  /** Light as far as plants use it, MJ m⁻² (see usedLightMJ), before cover. */
  usedLight: Float64Array;
  /** The same under the cover, times the response of growth to temperature. */
  growthLight: Float64Array;
  /** Bulbing response to temperature, 0…1, by the temperatures of none and of all. */
  bulbingTemp: (zeroC: number, fullC: number) => Float64Array;
  /** Thermal time of ripening, by the type's base and cap temperatures. */
  ripeningTT: (baseC: number, capC: number) => Float64Array;
  /** Days at 9 °C gained towards flowering, by ceiling temperature of the type. */
  cold: (ceilingC: number) => Float64Array;
  /** Reference evapotranspiration, mm a day. */
  referenceEt: () => Float64Array;
};

/** Daily amplitude left at sowing depth (1.5 cm) with a damping depth of 11 cm: e^(−1.5/11). Source: Hillel 1982, damping-depth formula. */
const seedDepthDamping = Math.exp(-1.5 / 11);

/** Rain from which a day counts as wet for leaves, mm. */
const wetFromMm = 1;
const wetnessMemoryDays = 20;

/** What a mean climate has smoothed away and plants still feel, day by day. */
export type Smoothed = {
  /** Share of wet days: its rain falls a little every day. */
  wetShare: Float64Array;
  /** Standard deviation of a day's temperature, °C. Rates that bend with temperature are taken that far on both sides. */
  spreadC: Float64Array;
};

/** @param smoothed null for weather with real days */
export function driversOf(
  weather: WeatherSeries,
  cover: Cover,
  growth: GrowthValues,
  smoothed: Smoothed | null,
  climate: MonthlyClimate,
): Drivers {
  const { days } = weather;
  const gain = covers[cover];
  const column = () => new Float64Array(days);
  const tempMinC = column();
  const tempMaxC = column();
  const tempMeanC = column();
  const soilMeanC = column();
  const usedLight = column();
  const growthLight = column();
  const wetness = column();
  let soil = (weather.tempMinC[0] + weather.tempMaxC[0]) / 2;
  let wet = 0.3;
  const spread = (f: (temp: number) => number, temp: number, i: number) => {
    if (!smoothed) return f(temp);
    const by = smoothed.spreadC[i];
    return (f(temp - by) + f(temp + by)) / 2;
  };
  const soilLowC = column();
  const soilHighC = column();
  for (let i = 0; i < days; i++) {
    tempMinC[i] = weather.tempMinC[i] + gain.minC;
    tempMaxC[i] = weather.tempMaxC[i] + gain.maxC;
    const meanC = (tempMinC[i] + tempMaxC[i]) / 2;
    tempMeanC[i] = meanC;
    // The bed follows the air within a day or two.
    soil += 0.5 * (meanC - soil);
    soilMeanC[i] = soil;
    const swing = ((tempMaxC[i] - tempMinC[i]) / 2) * seedDepthDamping;
    soilLowC[i] = soil - swing;
    soilHighC[i] = soil + swing;
    usedLight[i] = usedLightMJ(weather.solarMJ[i], growth.lightHalfMJ);
    growthLight[i] = usedLight[i] * gain.light * spread(growthTemperatureFactor, meanC, i);
    wet += ((weather.rainMm[i] >= wetFromMm ? 1 : 0) - wet) / wetnessMemoryDays;
    wetness[i] = smoothed ? smoothed.wetShare[i] : wet;
  }
  const soilTT = degreesColumn(soilLowC, soilHighC, growth.emergenceBaseC, growth.emergenceCapC);
  const response = smoothed
    ? bothSides(tempMinC, tempMaxC, smoothed.spreadC)
    : (fill: Fill) => fill(tempMinC, tempMaxC);
  const degrees = (baseC: number, capC: number) =>
    response((low, high) => degreesColumn(low, high, baseC, capC));
  let referenceEt: Float64Array | null = null;
  return {
    days,
    tempMeanC,
    tempMinC,
    rainMm: weather.rainMm,
    wetness,
    leafTT: degrees(growth.leafBaseC, growth.leafCapC),
    lifeTT: degrees(3, 35),
    growthTT: degrees(growth.growthBaseC, growth.leafCapC),
    soilTT,
    soilMeanC,
    usedLight,
    growthLight,
    bulbingTemp: keep((zeroC, fullC) => response((low, high) => rampColumn(low, high, zeroC, fullC))),
    ripeningTT: keep(degrees),
    cold: keep((ceilingC) => response((low, high) => coldColumn(low, high, ceilingC))),
    referenceEt() {
      referenceEt ??= referenceEtOf(weather, climate);
      return referenceEt;
    },
  };
}

type Fill = (lowC: Float64Array, highC: Float64Array) => Float64Array;

/** Takes a response halfway between a day colder and a day warmer by the spread. */
function bothSides(
  lowC: Float64Array,
  highC: Float64Array,
  spreadC: Float64Array,
): (fill: Fill) => Float64Array {
  const shifted = (of: Float64Array, side: number) => of.map((temp, i) => temp + side * spreadC[i]);
  const cold = [shifted(lowC, -1), shifted(highC, -1)] as const;
  const warm = [shifted(lowC, 1), shifted(highC, 1)] as const;
  return (fill) => {
    const inWarmth = fill(...warm);
    return fill(...cold).map((inCold, i) => (inCold + inWarmth[i]) / 2);
  };
}

/** A season asks for a handful of pairs; a fit that tries ever new ones starts again. */
const mostKept = 24;

/** Works a column out once for each pair of temperatures; asked for the same pair as last time, it answers at once. */
function keep(make: (a: number, b: number) => Float64Array): (a: number, b?: number) => Float64Array {
  const made = new Map<string, Float64Array>();
  let lastA = Number.NaN;
  let lastB = Number.NaN;
  let last: Float64Array = new Float64Array(0);
  return (a, b = 0) => {
    if (a === lastA && b === lastB) return last;
    const key = `${a} ${b}`;
    last = made.get(key) ?? make(a, b);
    if (made.size >= mostKept) made.clear();
    made.set(key, last);
    lastA = a;
    lastB = b;
    return last;
  };
}

/** The drivers of one year, met again `times` times. */
export function repeatDrivers(year: Drivers, times: number): Drivers {
  const tile = (column: Float64Array) => {
    const out = new Float64Array(column.length * times);
    for (let i = 0; i < times; i++) out.set(column, i * column.length);
    return out;
  };
  let referenceEt: Float64Array | null = null;
  return {
    days: year.days * times,
    tempMeanC: tile(year.tempMeanC),
    tempMinC: tile(year.tempMinC),
    rainMm: tile(year.rainMm),
    wetness: tile(year.wetness),
    leafTT: tile(year.leafTT),
    lifeTT: tile(year.lifeTT),
    growthTT: tile(year.growthTT),
    soilTT: tile(year.soilTT),
    soilMeanC: tile(year.soilMeanC),
    usedLight: tile(year.usedLight),
    growthLight: tile(year.growthLight),
    bulbingTemp: keep((zeroC, fullC) => tile(year.bulbingTemp(zeroC, fullC))),
    ripeningTT: keep((baseC, capC) => tile(year.ripeningTT(baseC, capC))),
    cold: keep((ceilingC) => tile(year.cold(ceilingC))),
    referenceEt() {
      referenceEt ??= tile(year.referenceEt());
      return referenceEt;
    },
  };
}

function referenceEtOf(weather: WeatherSeries, climate: MonthlyClimate): Float64Array {
  const out = new Float64Array(weather.days);
  const psychrometric = psychrometricConstant(climate.elevationM);
  const clearSky = new Float64Array(climateYearDays);
  for (let day = 0; day < climateYearDays; day++)
    clearSky[day] = clearSkyRadiation(
      extraterrestrialRadiation(climate.latitudeDeg, day + 1),
      climate.elevationM,
    );
  const wind2mMs = climate.wind10mMs.map((wind) => windAt2m(wind, 10));
  const monthOf = Uint8Array.from(clearSky, (_, climateDay) => monthOfClimateDay(climateDay));
  for (let i = 0; i < weather.days; i++) {
    const climateDay = i % climateYearDays;
    const month = monthOf[climateDay];
    out[i] = dailyReferenceEt(
      weather.tempMinC[i],
      weather.tempMaxC[i],
      weather.solarMJ[i],
      clearSky[climateDay],
      climate.relativeHumidityPct[month],
      wind2mMs[month],
      psychrometric,
    );
  }
  return out;
}
