import { dailyReferenceEt, psychrometricConstant, windAt2m } from '../bed/index.ts';
import { climateYearDays, monthOfClimateDay } from '../calendar/index.ts';
import type { MonthlyClimate } from '../climate/index.ts';
import {
  type Cover,
  coldResponse,
  covers,
  dayMean,
  degreesAbove,
  type GrowthValues,
  growthTemperatureFactor,
  ramp,
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
  /** Growth of a closed canopy, g m⁻² d⁻¹: radiation × use efficiency × temperature factor. */
  canopyGain: Float64Array;
  /** Bulbing response to temperature, 0…1. */
  bulbingTemp: Float64Array;
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

/**
 * @param wetShare smoothed share of wet days where the weather is a mean climate whose rain falls a little
 *   every day; null for weather with real wet and dry days.
 */
export function driversOf(
  weather: WeatherSeries,
  cover: Cover,
  growth: GrowthValues,
  wetShare: Float64Array | null,
  climate: MonthlyClimate,
): Drivers {
  const { days } = weather;
  const gain = covers[cover];
  const column = () => new Float64Array(days);
  const tempMinC = column();
  const tempMaxC = column();
  const tempMeanC = column();
  const soilMeanC = column();
  const soilTT = column();
  const canopyGain = column();
  const wetness = column();
  let soil = (weather.tempMinC[0] + weather.tempMaxC[0]) / 2;
  let wet = 0.3;
  const soilResponse = (t: number) => degreesAbove(t, growth.emergenceBaseC, growth.emergenceCapC);
  for (let i = 0; i < days; i++) {
    tempMinC[i] = weather.tempMinC[i] + gain.minC;
    tempMaxC[i] = weather.tempMaxC[i] + gain.maxC;
    const meanC = (tempMinC[i] + tempMaxC[i]) / 2;
    tempMeanC[i] = meanC;
    // The bed follows the air within a day or two.
    soil += 0.5 * (meanC - soil);
    soilMeanC[i] = soil;
    const swing = ((tempMaxC[i] - tempMinC[i]) / 2) * seedDepthDamping;
    soilTT[i] = dayMean(soilResponse, soil - swing, soil + swing);
    canopyGain[i] = growth.radiationUseGMJ * weather.solarMJ[i] * gain.light * growthTemperatureFactor(meanC);
    wet += ((weather.rainMm[i] >= wetFromMm ? 1 : 0) - wet) / wetnessMemoryDays;
    wetness[i] = wetShare ? wetShare[i] : wet;
  }
  const response = (f: (temp: number) => number) => {
    const out = column();
    for (let i = 0; i < days; i++) out[i] = dayMean(f, tempMinC[i], tempMaxC[i]);
    return out;
  };
  let referenceEt: Float64Array | null = null;
  return {
    days,
    tempMeanC,
    tempMinC,
    rainMm: weather.rainMm,
    wetness,
    leafTT: response((t) => degreesAbove(t, growth.leafBaseC, growth.leafCapC)),
    lifeTT: response((t) => degreesAbove(t, 3, 35)),
    growthTT: response((t) => degreesAbove(t, growth.growthBaseC, growth.leafCapC)),
    soilTT,
    soilMeanC,
    canopyGain,
    bulbingTemp: response((t) => ramp(t, growth.bulbingBaseC, growth.bulbingFullC)),
    ripeningTT: keep((baseC, capC) => response((t) => degreesAbove(t, baseC, capC))),
    cold: keep((ceilingC) => response((t) => coldResponse(t, ceilingC))),
    referenceEt() {
      referenceEt ??= referenceEtOf(weather, climate);
      return referenceEt;
    },
  };
}

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
    canopyGain: tile(year.canopyGain),
    bulbingTemp: tile(year.bulbingTemp),
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
  for (let i = 0; i < weather.days; i++) {
    const climateDay = i % climateYearDays;
    const month = monthOfClimateDay(climateDay);
    out[i] = dailyReferenceEt(
      weather.tempMinC[i],
      weather.tempMaxC[i],
      weather.solarMJ[i],
      clearSky[climateDay],
      climate.relativeHumidityPct[month],
      windAt2m(climate.wind10mMs[month], 10),
      psychrometric,
    );
  }
  return out;
}
