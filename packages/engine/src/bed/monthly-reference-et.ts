import type { MonthlyClimate } from '../climate/index.ts';
import { clearSkyRadiation, extraterrestrialRadiation, solarRadiation } from '../sky/index.ts';
import { meanSaturationVapourPressure, psychrometricConstant, windAt2m } from './air.ts';
import { monthlySoilHeat, netLongwave, netShortwave, penmanMonteith } from './evapotranspiration.ts';

/** Mean daily ET₀ of the twelve months, mm a day, January first (FAO-56 Eq. 6 with monthly means). */
export function monthlyReferenceEt(climate: MonthlyClimate): Float64Array {
  const psychrometric = psychrometricConstant(climate.elevationM);
  return Float64Array.from({ length: 12 }, (_, month) => {
    const mean = climate.tempMeanC[month];
    const half = climate.tempRangeC[month] / 2;
    const saturation = meanSaturationVapourPressure(mean - half, mean + half);
    const vapour = (saturation * climate.relativeHumidityPct[month]) / 100;
    const aboveAir = extraterrestrialRadiation(climate.latitudeDeg, middleDayOfYear(month));
    const solar = solarRadiation(aboveAir, climate.sunshinePct[month] / 100);
    const clearSky = clearSkyRadiation(aboveAir, climate.elevationM);
    const net = netShortwave(solar) - netLongwave(mean - half, mean + half, vapour, solar, clearSky);
    const soilHeat = monthlySoilHeat(
      climate.tempMeanC[(month + 11) % 12],
      climate.tempMeanC[(month + 1) % 12],
    );
    const wind = windAt2m(climate.wind10mMs[month], 10);
    return penmanMonteith(mean, saturation, vapour, net - soilHeat, wind, psychrometric);
  });
}

/** Day of the year in the middle of a month 0…11 (FAO-56 annex 2: INT(30.4 M − 15)). */
function middleDayOfYear(month: number): number {
  return Math.floor(30.4 * (month + 1) - 15);
}
