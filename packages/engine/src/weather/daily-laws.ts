import { climateYearDays, firstDayOfMonth, monthLengths, monthOfClimateDay } from '../calendar/index.ts';
import type { MonthlyClimate } from '../climate/index.ts';
import { clearSkyRadiation } from '../sky/index.ts';
import { boundedCurve } from './bounded-curve.ts';
import { climateCurves } from './climate-curves.ts';
import {
  clearnessSpread,
  dryClearnessShift,
  dryMinShift,
  dryRangeShift,
  minIntoMin,
  minIntoRange,
  minRangeCorrelation,
  minSkewness,
  monthScaleShare,
  rainShape,
  rangeIntoMin,
  rangeIntoRange,
  rangeMonthScaleShare,
  wetPersistence,
  yearScaleShare,
} from './spread.ts';

/** The laws of each climate day, 365 values a field; those marked "by kind" hold 730: each
 * climate day's value for a dry day, then for a wet day (index 2 × climate day + 1 if wet). */
export type DailyLaws = {
  /** Chance of a wet day, by kind of the day before. */
  wetAfter: Float64Array;
  /** Mean minimum, °C, by kind, and the standard deviation about that. */
  minMeanC: Float64Array;
  minSdC: Float64Array;
  /** A sixth of the skewness of the minimum. */
  minSkewSixth: Float64Array;
  /** Mean range, °C, by kind. */
  rangeMeanC: Float64Array;
  /** Solar radiation, MJ m⁻² d⁻¹: its mean and how far it may stray to either side, by kind; its standard deviation. */
  solarMeanMJ: Float64Array;
  solarReachMJ: Float64Array;
  solarSdMJ: Float64Array;
  /** Mean rain beyond 0.1 mm on a wet day, mm, and the gamma shape. */
  rainBeyondMm: Float64Array;
  rainShape: Float64Array;
  /** Yesterday's minimum and range carried into today's, and the loads of today's two fresh normals. */
  carryMin: Float64Array;
  memory: { rangeIntoMin: number; minIntoRange: number; rangeIntoRange: number };
  freshMin: Float64Array;
  freshRangeShared: Float64Array;
  freshRange: Float64Array;
};

/** Least rain of a day that counts as wet, mm (the definition of `wetDays`). */
export const wetDayMm = 0.1;
/** Mean rain of a wet day is kept below this, mm (wettest monthly normals have about 40; memory). */
const heaviestMeanMm = 60;
/** Clearness of the darkest days: dense overcast; records of Florianópolis 2018 go down to 0.07. */
const darkest = 0.06;

export function dailyLaws(climate: MonthlyClimate): DailyLaws {
  const curves = climateCurves(climate);
  const continentality = Math.max(...climate.tempMeanC) - Math.min(...climate.tempMeanC);
  const brightest = clearSkyRadiation(1, climate.elevationM);
  const wetAfter = byKind();
  const minMeanC = byKind();
  const rangeMeanC = byKind();
  const solarMeanMJ = byKind();
  const solarReachMJ = byKind();
  const solarSdMJ = new Float64Array(climateYearDays);
  const rainBeyondMm = new Float64Array(climateYearDays);
  const shape = new Float64Array(climateYearDays);
  const minSkewSixth = new Float64Array(climateYearDays);
  const carryMin = new Float64Array(climateYearDays);
  const freshMin = new Float64Array(climateYearDays);
  const freshRangeShared = new Float64Array(climateYearDays);
  const freshRange = new Float64Array(climateYearDays);

  const wetShare = wetShareThatRainAllows(curves.wetShare, climate);
  const minSdMonthly = new Float64Array(12);
  const rainBeyondMonthly = new Float64Array(12);
  for (let month = 0; month < 12; month++) {
    const first = firstDayOfMonth[month]!;
    const days = monthLengths[month]!;
    const wet = mean(wetShare, first, days);
    const shift = dryMinShift(climate.tempRangeC[month]!, continentality) * climate.minTempSdC[month]!;
    const total = climate.minTempSdC[month]! ** 2;
    // The table's spread is about the month's mean: the season's drift and the two kinds of day are part of it.
    const rest = total - variance(curves.tempMinC, first, days) - wet * (1 - wet) * shift * shift;
    minSdMonthly[month] = Math.sqrt(Math.max(rest, 0.2 * total));
    rainBeyondMonthly[month] = wet > 0 ? climate.rainMm[month]! / (days * wet) - wetDayMm : 0;
  }
  const minSdC = boundedCurve(minSdMonthly, 0, Number.POSITIVE_INFINITY);
  const minSdAllC = boundedCurve(climate.minTempSdC, 0, Number.POSITIVE_INFINITY);

  const persistence = wetPersistence(continentality);
  const annualMean = mean(climate.tempMeanC, 0, 12);
  const fastShares = Math.sqrt((1 - monthScaleShare - yearScaleShare) * (1 - rangeMonthScaleShare));
  const memory = {
    rangeIntoMin: rangeIntoMin(continentality),
    minIntoRange: minIntoRange(continentality),
    rangeIntoRange,
  };
  for (let day = 0; day < climateYearDays; day++) {
    const wet = wetShare[day]!;
    const dry = 1 - wet;
    const wetBefore = wetShare[(day + climateYearDays - 1) % climateYearDays]!;
    // Chosen so that the chance of a wet day is exactly the wet share, also while that changes with the season.
    const afterDry = Math.min(Math.max(wet - persistence * wetBefore, 0), 1);
    wetAfter[2 * day] = afterDry;
    wetAfter[2 * day + 1] = wetBefore > 0 ? Math.min((wet - (1 - wetBefore) * afterDry) / wetBefore, 1) : wet;

    const range = curves.tempRangeC[day]!;
    const minShift = dryMinShift(range, continentality) * minSdAllC[day]!;
    minMeanC[2 * day] = curves.tempMinC[day]! + wet * minShift;
    minMeanC[2 * day + 1] = curves.tempMinC[day]! - dry * minShift;
    const skewness = minSkewness(continentality, minSdAllC[day]!);
    minSkewSixth[day] = skewness / 6;
    // The bend below widens the spread by this factor.
    minSdC[day] = minSdC[day]! / Math.sqrt(1 + skewness ** 2 / 18);
    const rangeShift = dryRangeShift(range, continentality) * range;
    rangeMeanC[2 * day] = range + wet * rangeShift;
    rangeMeanC[2 * day + 1] = range - dry * rangeShift;

    const sky = curves.extraterrestrialMJ[day]!;
    const clearness = curves.clearness[day]!;
    const clearnessShift = Math.max(
      0,
      Math.min(
        dryClearnessShift,
        (0.8 * (brightest - clearness)) / Math.max(wet, 0.01),
        (0.8 * (clearness - darkest)) / Math.max(dry, 0.01),
      ),
    );
    const ofState = [clearness + wet * clearnessShift, clearness - dry * clearnessShift] as const;
    for (const state of [0, 1] as const) {
      solarMeanMJ[2 * day + state] = ofState[state] * sky;
      solarReachMJ[2 * day + state] =
        Math.max(0, Math.min(brightest - ofState[state], ofState[state] - darkest)) * sky;
    }
    solarSdMJ[day] = clearnessSpread * sky;

    const month = monthOfClimateDay(day);
    rainBeyondMm[day] = Math.max(rainBeyondMonthly[month]!, 0);
    shape[day] = rainShape(wet);

    // Fresh noise that keeps unit variances and the wanted correlation c: S − A S Aᵀ, split by Cholesky.
    const departure = curves.tempMinC[day]! + range / 2 - annualMean;
    const correlation = minRangeCorrelation(range, continentality, departure);
    const c = correlation / fastShares;
    const a = minIntoMin(correlation);
    carryMin[day] = a;
    const { rangeIntoMin: b, minIntoRange: e, rangeIntoRange: g } = memory;
    const q11 = 1 - (a * a + b * b + 2 * a * b * c);
    const q12 = c - (a * e + b * g + (a * g + b * e) * c);
    const q22 = 1 - (e * e + g * g + 2 * e * g * c);
    freshMin[day] = Math.sqrt(Math.max(q11, 0.05));
    freshRangeShared[day] = q12 / freshMin[day]!;
    freshRange[day] = Math.sqrt(Math.max(q22 - freshRangeShared[day]! ** 2, 0.05));
  }
  return {
    wetAfter,
    minMeanC,
    minSdC,
    minSkewSixth,
    rangeMeanC,
    solarMeanMJ,
    solarReachMJ,
    solarSdMJ,
    rainBeyondMm,
    rainShape: shape,
    carryMin,
    memory,
    freshMin,
    freshRangeShared,
    freshRange,
  };
}

/**
 * The wet share that a month's rain allows: no more days than it fills with 0.1 mm each, and, where a table has rain
 * but hardly a wet day, enough to hold it.
 */
function wetShareThatRainAllows(wetShare: Float64Array, climate: MonthlyClimate): Float64Array {
  const allowed = wetShare.slice();
  for (let month = 0; month < 12; month++) {
    const first = firstDayOfMonth[month]!;
    const days = monthLengths[month]!;
    const rain = climate.rainMm[month]! / days;
    const share = mean(wetShare, first, days);
    const kept = Math.max(Math.min(share, rain / wetDayMm), rain / heaviestMeanMm);
    if (kept === share) continue;
    for (let day = first; day < first + days; day++) {
      allowed[day] = share > kept ? (allowed[day]! * kept) / share : kept;
    }
  }
  return allowed;
}

function byKind(): Float64Array {
  return new Float64Array(2 * climateYearDays);
}

function mean(values: Float64Array, first: number, days: number): number {
  let sum = 0;
  for (let day = first; day < first + days; day++) sum += values[day]!;
  return sum / days;
}

function variance(values: Float64Array, first: number, days: number): number {
  const centre = mean(values, first, days);
  let sum = 0;
  for (let day = first; day < first + days; day++) sum += (values[day]! - centre) ** 2;
  return sum / days;
}
