import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import {
  atmosphericPressure,
  dailyReferenceEt,
  hargreavesEt,
  meanSaturationVapourPressure,
  mmPerMJ,
  monthlySoilHeat,
  netLongwave,
  netShortwave,
  penmanMonteith,
  psychrometricConstant,
  saturationSlope,
  saturationVapourPressure,
  vapourPressureFromHumidityRange,
  windAt2m,
} from '../../src/bed/index.ts';
import {
  clearSkyRadiation,
  daylightHoursFao,
  extraterrestrialRadiation,
  solarRadiation,
  solarRadiationFromRange,
} from '../../src/sky/index.ts';
import fao from './fao56.json' with { type: 'json' };
import { expectNear, expectPrinted } from './printed.ts';

const { examples } = fao;

/** Worked examples of methods that the engine does not have. */
const notImplemented: Readonly<Record<string, string>> = {
  ex4: 'vapour pressure from a psychrometer: no input of ours has wet bulbs',
};

describe('air (FAO-56 chapter 3)', () => {
  it('example 2: pressure and psychrometric constant', () => {
    const { inputs, expected, tolerance } = examples.ex2;
    expectNear(atmosphericPressure(inputs.z_m), expected.P_kPa, tolerance.P_kPa);
    expectNear(psychrometricConstant(inputs.z_m), expected.gamma_kPa_per_C, tolerance.gamma_kPa_per_C);
  });

  it('example 3: mean saturation vapour pressure', () => {
    const { inputs, expected, tolerance } = examples.ex3;
    expectNear(meanSaturationVapourPressure(inputs.Tmin_C, inputs.Tmax_C), expected.es_kPa, tolerance.es_kPa);
  });

  it('example 5: vapour pressure from relative humidity', () => {
    const { inputs, expected, tolerance } = examples.ex5;
    const { Tmin_C, Tmax_C, RHmin_pct, RHmax_pct } = inputs;
    expectPrinted(saturationVapourPressure(Tmin_C), expected.e0_Tmin_kPa, 3);
    expectPrinted(saturationVapourPressure(Tmax_C), expected.e0_Tmax_kPa, 3);
    expectNear(
      vapourPressureFromHumidityRange(Tmin_C, Tmax_C, RHmin_pct, RHmax_pct),
      expected.ea_kPa,
      tolerance.ea_kPa,
    );
    const meanHumidity = (RHmin_pct + RHmax_pct) / 2;
    expectNear(
      (meanSaturationVapourPressure(Tmin_C, Tmax_C) * meanHumidity) / 100,
      expected.ea_from_RHmean_kPa,
      tolerance.ea_kPa,
    );
  });

  it('example 14: wind at 2 m', () => {
    const { inputs, expected, tolerance } = examples.ex14;
    expectNear(windAt2m(inputs.uz_m_s, inputs.z_m), expected.u2_m_s, tolerance.u2_m_s);
  });

  it('annex tables 2.2, 2.3, 2.4 and 2.9', () => {
    const { e0_kPa, slope_kPa_C, gamma_kPa_C_by_z_m, wind_factor_by_z_m } = fao.annexTables;
    for (const [temp, printed] of Object.entries(e0_kPa)) {
      expectPrinted(saturationVapourPressure(Number(temp)), printed, 3);
    }
    for (const [temp, printed] of Object.entries(slope_kPa_C)) {
      expectPrinted(saturationSlope(Number(temp)), printed, 3);
    }
    for (const [elevation, printed] of Object.entries(gamma_kPa_C_by_z_m)) {
      // The table was printed from rounded pressures: one unit of its last digit.
      expectNear(psychrometricConstant(Number(elevation)), printed, 0.001);
    }
    for (const [height, printed] of Object.entries(wind_factor_by_z_m)) {
      expectNear(windAt2m(1, Number(height)), printed, 0.001);
    }
  });
});

describe('radiation (FAO-56 chapter 3)', () => {
  it('examples 8 and 9: radiation above the air and daylight hours', () => {
    const { inputs, expected, tolerance } = examples.ex8;
    expectNear(
      extraterrestrialRadiation(inputs.lat_deg, inputs.J),
      expected.Ra_MJ_m2_d,
      tolerance.Ra_MJ_m2_d,
    );
    const ex9 = examples.ex9;
    expectNear(daylightHoursFao(ex9.inputs.lat_deg, ex9.inputs.J), ex9.expected.N_h, ex9.tolerance.N_h);
  });

  it('example 10: radiation from sunshine', () => {
    const { inputs, expected, tolerance } = examples.ex10;
    const ra = extraterrestrialRadiation(inputs.lat_deg, inputs.J);
    const hours = daylightHoursFao(inputs.lat_deg, inputs.J);
    expectNear(ra, expected.Ra_MJ_m2_d, tolerance.Ra_MJ_m2_d);
    expectNear(hours, expected.N_h, tolerance.N_h);
    const rs = solarRadiation(ra, inputs.n_h / hours);
    expectNear(rs, expected.Rs_MJ_m2_d, tolerance.Rs_MJ_m2_d);
    expectPrinted(rs * mmPerMJ, expected.Rs_mm_d, 1);
  });

  it('examples 11 and 12: net longwave and net radiation', () => {
    const { inputs, expected, tolerance } = examples.ex11;
    expectNear(
      netLongwave(inputs.Tmin_C, inputs.Tmax_C, inputs.ea_kPa, inputs.Rs, inputs.Rso),
      expected.Rnl_MJ_m2_d,
      tolerance.Rnl_MJ_m2_d,
    );
    const ex12 = examples.ex12;
    const shortwave = netShortwave(ex12.inputs.Rs);
    expectNear(shortwave, ex12.expected.Rns_MJ_m2_d, ex12.tolerance.Rn_MJ_m2_d);
    expectNear(shortwave - ex12.inputs.Rnl, ex12.expected.Rn_MJ_m2_d, ex12.tolerance.Rn_MJ_m2_d);
  });

  it('example 13: heat into the soil', () => {
    const { inputs, expected, tolerance } = examples.ex13;
    expectNear(monthlySoilHeat(inputs.T_prev_C, inputs.T_next_C), expected.G_MJ_m2_d, tolerance.G_MJ_m2_d);
  });

  it('example 15: radiation from the temperature range', () => {
    const { inputs, expected, tolerance } = examples.ex15;
    expectNear(
      solarRadiationFromRange(inputs.Ra, inputs.Tmax_C - inputs.Tmin_C, inputs.kRs),
      expected.Rs_MJ_m2_d,
      tolerance.Rs_MJ_m2_d,
    );
  });
});

describe('reference evapotranspiration (FAO-56 chapter 4)', () => {
  it('example 17: a month in Bangkok', () => {
    const { inputs: i, expected, tolerance } = examples.ex17;
    const ra = extraterrestrialRadiation(i.lat_deg, i.J);
    const rs = solarRadiation(ra, i.n_h / daylightHoursFao(i.lat_deg, i.J));
    const rso = clearSkyRadiation(ra, i.z_m);
    const rnl = netLongwave(i.Tmin_C, i.Tmax_C, i.ea_kPa, rs, rso);
    const rn = netShortwave(rs) - rnl;
    // The example takes the month before alone (Eq. 44): 0.14 (T − T before).
    const soilHeat = 2 * monthlySoilHeat(i.T_prev_month_C, i.T_month_C);
    expectPrinted(saturationSlope((i.Tmin_C + i.Tmax_C) / 2), expected.delta_kPa_C, 3);
    // Printed from the rounded pressure.
    expectNear(psychrometricConstant(i.z_m), expected.gamma_kPa_C, 1e-4);
    expectPrinted(ra, expected.Ra_MJ_m2_d, 2);
    expectPrinted(rs, expected.Rs_MJ_m2_d, 2);
    expectPrinted(rso, expected.Rso_MJ_m2_d, 2);
    expectPrinted(rnl, expected.Rnl_MJ_m2_d, 2);
    expectPrinted(rn, expected.Rn_MJ_m2_d, 2);
    expectPrinted(soilHeat, expected.G_MJ_m2_d, 2);
    expectNear(
      penmanMonteith(
        (i.Tmin_C + i.Tmax_C) / 2,
        meanSaturationVapourPressure(i.Tmin_C, i.Tmax_C),
        i.ea_kPa,
        rn - soilHeat,
        i.u2_m_s,
        psychrometricConstant(i.z_m),
      ),
      expected.ETo_mm_d,
      tolerance.ETo_mm_d,
    );
  });

  it('example 18: a day in Uccle', () => {
    const { inputs: i, expected, tolerance } = examples.ex18;
    const ra = extraterrestrialRadiation(i.lat_deg, i.J);
    const rs = solarRadiation(ra, i.n_h / daylightHoursFao(i.lat_deg, i.J));
    const rso = clearSkyRadiation(ra, i.z_m);
    const saturation = meanSaturationVapourPressure(i.Tmin_C, i.Tmax_C);
    const vapour = vapourPressureFromHumidityRange(i.Tmin_C, i.Tmax_C, i.RHmin_pct, i.RHmax_pct);
    const wind = windAt2m(i.u10_m_s, 10);
    const psychrometric = psychrometricConstant(i.z_m);
    expectNear(ra, expected.Ra_MJ_m2_d, tolerance.Ra_MJ_m2_d);
    expectPrinted(rs, expected.Rs_MJ_m2_d, 2);
    expectPrinted(rso, expected.Rso_MJ_m2_d, 2);
    expectPrinted(vapour, expected.ea_kPa, 3);
    expectPrinted(wind, expected.u2_m_s, 2);
    const rn = netShortwave(rs) - netLongwave(i.Tmin_C, i.Tmax_C, vapour, rs, rso);
    expectPrinted(rn, expected.Rn_MJ_m2_d, 2);
    const mean = (i.Tmin_C + i.Tmax_C) / 2;
    const et = penmanMonteith(mean, saturation, vapour, rn, wind, psychrometric);
    expectNear(et, expected.ETo_mm_d, tolerance.ETo_mm_d);
    // The kernel's scalar form, told the mean humidity that gives the same vapour pressure.
    const humidity = (100 * vapour) / saturation;
    expectNear(
      dailyReferenceEt(i.Tmin_C, i.Tmax_C, rs, rso, humidity, wind, psychrometric),
      expected.ETo_mm_d,
      tolerance.ETo_mm_d,
    );
  });

  it('example 20: a month in Lyon with temperatures alone', () => {
    const { inputs: i, expected, tolerance } = examples.ex20;
    const ra = extraterrestrialRadiation(i.lat_deg, i.J);
    const rs = solarRadiationFromRange(ra, i.Tmax_C - i.Tmin_C, i.kRs);
    const vapour = saturationVapourPressure(i.Tdew_assumed_C);
    const rn = netShortwave(rs) - netLongwave(i.Tmin_C, i.Tmax_C, vapour, rs, clearSkyRadiation(ra, i.z_m));
    const et = (wind: number) =>
      penmanMonteith(
        (i.Tmin_C + i.Tmax_C) / 2,
        meanSaturationVapourPressure(i.Tmin_C, i.Tmax_C),
        vapour,
        rn,
        wind,
        psychrometricConstant(i.z_m),
      );
    expectPrinted(rs, expected.Rs_MJ_m2_d, 2);
    expectPrinted(rn, expected.Rn_MJ_m2_d, 2);
    expectNear(et(i.u2_default_m_s), expected.ETo_mm_d, tolerance.ETo_mm_d);
    expectPrinted(et(1), expected.ETo_if_u2_1_mm_d, 1);
    expectPrinted(et(3), expected.ETo_if_u2_3_mm_d, 1);
    expectNear(hargreavesEt(i.Tmin_C, i.Tmax_C, ra), expected.Hargreaves_mm_d, tolerance.Hargreaves_mm_d);
  });
});

const shared = process.env.NECKFALL_SHARED;
describe('the shared folder', () => {
  it.skipIf(!shared)('has no worked example that is neither tested nor named (needs NECKFALL_SHARED)', () => {
    const text = readFileSync(join(shared ?? '', 'data', 'fao56-examples.json'), 'utf8');
    const ids = (JSON.parse(text) as { examples: { id: string }[] }).examples.map(({ id }) => id);
    expect([...Object.keys(examples), ...Object.keys(notImplemented)].sort()).toEqual(ids.sort());
  });
});
