import { civilDate, type DayNumber, dayOfYear } from '../calendar/index.ts';
import { extraterrestrialRadiation } from '../sky/index.ts';
import type { DailyRecord } from './daily-record.ts';
import { stuckDays, stuckRuns } from './stuck-runs.ts';

/** What is doubtful in a record: told, and used as it stands. */
export type WeatherFinding =
  /** Days with more sun than reaches the top of the air. */
  | { code: 'sun-beyond-sky'; days: number }
  /** Sun in all, as a share of what reaches the top of the air: less than under any sky. */
  | { code: 'sun-weak'; share: number }
  /** Days with more rain than {@link heavyRainMm}, and the most of them. */
  | { code: 'rain-heavy'; days: number; mostMm: number }
  /** The longest run of days with the very same minimum and maximum. */
  | { code: 'stuck'; days: number; firstDay: DayNumber };

/** Why a record can't be one of the place: its temperatures never change, or its seasons are the other hemisphere's. */
export type WeatherImpossible = 'constant' | 'other-hemisphere';

/** What is impossible in a record, and what is doubtful. */
export type WeatherCheck = { impossible: WeatherImpossible | null; findings: WeatherFinding[] };

/** More in a day falls in tropical storms only, mm (memory: a few stations on earth have had 1,000). */
export const heavyRainMm = 300;

/**
 * Radiation is 0.25 of that above the air under full cloud and 0.75 under none (FAO-56, equation 35). Over weeks no
 * place stays near the first; megajoules read as kilowatt hours, 3.6 to one, never pass the second through 3.6.
 */
const weakSunShare = 0.75 / 3.6;
/** Fewer days may all have been dull. */
const sunDays = 60;
/** Where the year has a warm and a cold half, whatever the rains do, degrees from the equator. */
const seasonsFromDeg = 25;
/** By so much the three midwinter months must be the warmer ones to be no measurement's doing, °C. */
const turnedByC = 3;
/** Days that the three months of midsummer, or of midwinter, must have to speak for them. */
const daysOfSeason = 30;

/** Whether a record can be that of a latitude, and what is doubtful in it. @param latitudeDeg −90…90, north positive */
export function checkWeather(record: DailyRecord, latitudeDeg: number): WeatherCheck {
  const temperatures = daysWithBoth(record);
  const findings: WeatherFinding[] = [];
  if (temperatures >= stuckDays && isConstant(record)) return { impossible: 'constant', findings };
  if (isTurned(record, latitudeDeg)) return { impossible: 'other-hemisphere', findings };
  const [longest] = stuckRuns(record).sort((a, b) => b.days - a.days);
  if (longest) findings.push({ code: 'stuck', days: longest.days, firstDay: record.firstDay + longest.at });
  findings.push(...sunFindings(record, latitudeDeg));
  let days = 0;
  let mostMm = 0;
  for (let at = 0; at < record.days; at++) {
    if (record.rainMm[at]! > heavyRainMm) days++;
    mostMm = Math.max(mostMm, record.rainMm[at]!);
  }
  if (days > 0) findings.push({ code: 'rain-heavy', days, mostMm });
  return { impossible: null, findings };
}

/** Days from `from` to `to`, both included, of which minimum and maximum are known. */
export function measuredDays(record: DailyRecord, from: DayNumber, to: DayNumber): number {
  let days = 0;
  const end = Math.min(record.days - 1, to - record.firstDay);
  for (let at = Math.max(0, from - record.firstDay); at <= end; at++) if (hasBoth(record, at)) days++;
  return days;
}

function daysWithBoth(record: DailyRecord): number {
  return measuredDays(record, record.firstDay, record.firstDay + record.days - 1);
}

function hasBoth({ known }: DailyRecord, at: number): boolean {
  return known.tempMinC[at] === 1 && known.tempMaxC[at] === 1;
}

function isConstant({ tempMinC, tempMaxC, known }: DailyRecord): boolean {
  const isOne = (values: Float64Array, marks: Uint8Array) => {
    const first = values[marks.indexOf(1)];
    return values.every((value, at) => marks[at] === 0 || value === first);
  };
  return isOne(tempMinC, known.tempMinC) && isOne(tempMaxC, known.tempMaxC);
}

/** Whether midwinter is warmer than midsummer where no place has it so. */
function isTurned(record: DailyRecord, latitudeDeg: number): boolean {
  if (Math.abs(latitudeDeg) < seasonsFromDeg) return false;
  const sums = { january: { days: 0, sumC: 0 }, july: { days: 0, sumC: 0 } };
  for (let at = 0; at < record.days; at++) {
    if (!hasBoth(record, at)) continue;
    const { month } = civilDate(record.firstDay + at);
    const sum = month === 12 || month <= 2 ? sums.january : month >= 6 && month <= 8 ? sums.july : null;
    if (sum === null) continue;
    sum.days++;
    sum.sumC += (record.tempMinC[at]! + record.tempMaxC[at]!) / 2;
  }
  const { january, july } = sums;
  if (Math.min(january.days, july.days) < daysOfSeason) return false;
  const januaryWarmerC = january.sumC / january.days - july.sumC / july.days;
  return (latitudeDeg > 0 ? januaryWarmerC : -januaryWarmerC) > turnedByC;
}

function sunFindings({ firstDay, solarMJ, known, days }: DailyRecord, latitudeDeg: number): WeatherFinding[] {
  let beyond = 0;
  let sunMJ = 0;
  let aboveMJ = 0;
  let knownDays = 0;
  for (let at = 0; at < days; at++) {
    if (known.solarMJ[at] !== 1) continue;
    const above = extraterrestrialRadiation(latitudeDeg, dayOfYear(firstDay + at));
    if (solarMJ[at]! > above + roundedMJ) beyond++;
    knownDays++;
    sunMJ += solarMJ[at]!;
    aboveMJ += above;
  }
  const findings: WeatherFinding[] = [];
  if (beyond > 0) findings.push({ code: 'sun-beyond-sky', days: beyond });
  if (knownDays >= sunDays && sunMJ < weakSunShare * aboveMJ)
    findings.push({ code: 'sun-weak', share: sunMJ / aboveMJ });
  return findings;
}

/** Sun in polar night, and rounding, MJ m⁻² d⁻¹. */
const roundedMJ = 0.5;
