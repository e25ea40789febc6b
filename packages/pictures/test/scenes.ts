import {
  climateYearDays,
  dayNumber,
  type MonthlyClimate,
  type OnionType,
  openSite,
  planDefaults,
  type Site,
  type StartMethod,
} from '@neckfall/engine';
import fc from 'fast-check';

export const everyInk = Object.fromEntries(
  ['paper', 'paper-2', 'ink', 'ink-2', 'line', 'leaf', 'skin', 'skin-2', 'alarm', 'sky', 'earth'].map(
    (name) => [name, '#123'],
  ),
);

export const newYear2027 = dayNumber(2027, 1, 1);

/** A made-up climate: a sine year about a mean, its summer where the latitude has it. */
function sineClimate(latitudeDeg: number, meanC: number, swingC: number, rainMm = 50): MonthlyClimate {
  const summer = latitudeDeg >= 0 ? 6.5 : 0.5;
  const wave = (month: number) => Math.cos(((month - summer) / 12) * 2 * Math.PI);
  const monthly = (of: (month: number) => number) =>
    Float64Array.from({ length: 12 }, (_, month) => of(month));
  const temp = (month: number) => meanC + swingC * wave(month);
  return {
    latitudeDeg,
    longitudeDeg: 0,
    elevationM: 50,
    tempMeanC: monthly(temp),
    tempRangeC: monthly(() => 9),
    rainMm: monthly((month) => rainMm * (1 + 0.8 * wave(month + 3))),
    wetDays: monthly(() => 11),
    relativeHumidityPct: monthly(() => 75),
    sunshinePct: monthly(() => 45),
    wind10mMs: monthly(() => 3),
    frostNights: monthly((month) => Math.max(0, Math.min(28, 20 - 3 * temp(month)))),
    minTempSdC: monthly(() => 3.5),
  };
}

export function sineSite(latitudeDeg: number, meanC: number, swingC: number): Site {
  return openSite({ climate: sineClimate(latitudeDeg, meanC, swingC), years: 5, seed: 3 });
}

export function planOf(type: OnionType, start: StartMethod, startDay: number) {
  return { ...planDefaults, type, start, startDay };
}

/** Any climate between the poles, wet or dry, hot or cold. */
export const anyClimate = fc
  .record({
    latitudeDeg: fc.integer({ min: -89, max: 89 }),
    meanC: fc.integer({ min: -15, max: 32 }),
    swingC: fc.integer({ min: 0, max: 25 }),
    rainMm: fc.integer({ min: 0, max: 600 }),
  })
  .map(({ latitudeDeg, meanC, swingC, rainMm }) => sineClimate(latitudeDeg, meanC, swingC, rainMm));

/** From a phone of 320 px with text at 200 % to a wide desk, in px of pictures. */
export const anyWidth = fc.integer({ min: 140, max: 1400 });
export const anyDay = fc.integer({ min: newYear2027, max: newYear2027 + climateYearDays });

/** A whole year of starts takes minutes to shrink: the first counterexample is shown as it is. */
export const seeded = { seed: 20261125, numRuns: 60, endOnFailure: true };
