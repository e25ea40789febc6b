import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  dailyReferenceEt,
  hargreavesEt,
  monthlyReferenceEt,
  netLongwave,
  penmanMonteith,
  psychrometricConstant,
} from '../../src/bed/index.ts';
import type { MonthlyClimate } from '../../src/climate/index.ts';
import fao from './fao56.json' with { type: 'json' };

const year = (value: number) => new Float64Array(12).fill(value);
const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });

function climate(fields: Partial<MonthlyClimate>): MonthlyClimate {
  return {
    latitudeDeg: 45,
    longitudeDeg: 0,
    elevationM: 200,
    tempMeanC: year(15),
    tempRangeC: year(10),
    rainMm: year(60),
    wetDays: year(10),
    relativeHumidityPct: year(70),
    sunshinePct: year(50),
    wind10mMs: year(3),
    frostNights: year(0),
    minTempSdC: year(3),
    ...fields,
  };
}

describe('monthly reference evapotranspiration', () => {
  it('gives FAO-56 example 17, Bangkok in April, from a climate table', () => {
    const { inputs, expected, tolerance } = fao.examples.ex17;
    const tempMeanC = year(inputs.T_month_C);
    tempMeanC[2] = inputs.T_prev_month_C;
    // The example knows the month before alone; this May gives the same heat into the soil.
    tempMeanC[4] = inputs.T_prev_month_C + 2 * (inputs.T_month_C - inputs.T_prev_month_C);
    const et = monthlyReferenceEt(
      climate({
        latitudeDeg: inputs.lat_deg,
        elevationM: inputs.z_m,
        tempMeanC,
        tempRangeC: year(inputs.Tmax_C - inputs.Tmin_C),
        relativeHumidityPct: year((100 * inputs.ea_kPa) / expected.es_kPa),
        sunshinePct: year((100 * inputs.n_h) / expected.N_h),
        wind10mMs: year(inputs.u2_m_s / fao.annexTables.wind_factor_by_z_m['10.0']),
      }),
    );
    expect(Math.abs(et[3] - expected.ETo_mm_d)).toBeLessThanOrEqual(tolerance.ETo_mm_d);
  });

  it('of the south is that of the north half a year later', () => {
    const north = monthlyReferenceEt(climate({ latitudeDeg: 40 }));
    const south = monthlyReferenceEt(climate({ latitudeDeg: -40 }));
    // The sun is 3 % nearer in January, so 7 % stronger, and the months' middles differ by up to three days.
    for (let month = 0; month < 12; month++) {
      expect(Math.abs(south[(month + 6) % 12] / north[month] - 1)).toBeLessThan(0.1);
    }
  });

  it('is a number, and not below zero, in every climate on land', () => {
    fc.assert(
      fc.property(
        number(-90, 90),
        number(-400, 5000),
        number(-45, 38),
        number(0, 25),
        number(1, 100),
        number(0, 100),
        number(0, 15),
        (latitudeDeg, elevationM, temp, range, humidity, sunshine, wind) => {
          const et = monthlyReferenceEt(
            climate({
              latitudeDeg,
              elevationM,
              tempMeanC: year(temp),
              tempRangeC: year(range),
              relativeHumidityPct: year(humidity),
              sunshinePct: year(sunshine),
              wind10mMs: year(wind),
            }),
          );
          // The highest measured or estimated are near 20 mm; thin dry air in a gale makes more, but not 50.
          return et.every((value) => value >= 0 && value < 50);
        },
      ),
      { seed: 6 },
    );
  });
});

describe('daily reference evapotranspiration', () => {
  const psychrometric = psychrometricConstant(100);

  it('is Penman–Monteith of its parts', () => {
    fc.assert(
      fc.property(
        number(-20, 25),
        number(0, 20),
        number(0, 30),
        number(10, 100),
        number(0, 8),
        (low, range, sun, humidity, wind) => {
          const high = low + range;
          const e = (temp: number) => 0.6108 * Math.exp((17.27 * temp) / (temp + 237.3));
          const saturation = (e(low) + e(high)) / 2;
          const vapour = (saturation * humidity) / 100;
          const net = 0.77 * sun - netLongwave(low, high, vapour, sun, 30);
          expect(dailyReferenceEt(low, high, sun, 30, humidity, wind, psychrometric)).toBeCloseTo(
            penmanMonteith((low + high) / 2, saturation, vapour, net, wind, psychrometric),
            10,
          );
        },
      ),
      { seed: 18 },
    );
  });

  it('rises with sun and wind, and falls with humidity', () => {
    const et = (sun: number, humidity: number, wind: number) =>
      dailyReferenceEt(12, 24, sun, 30, humidity, wind, psychrometric);
    expect(et(25, 60, 2)).toBeGreaterThan(et(15, 60, 2));
    expect(et(25, 60, 4)).toBeGreaterThan(et(25, 60, 2));
    expect(et(25, 80, 2)).toBeLessThan(et(25, 60, 2));
  });

  it('is zero, not negative, in a polar night and in deep frost', () => {
    expect(dailyReferenceEt(-30, -20, 0, 0, 95, 0.5, psychrometric)).toBe(0);
    expect(hargreavesEt(-40, -30, 2)).toBe(0);
    expect(hargreavesEt(10, 10, 20)).toBe(0);
  });
});
