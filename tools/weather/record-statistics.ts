import { monthOfClimateDay } from '../../packages/engine/src/calendar/index.ts';
import { mean, standardDeviation } from '../../packages/engine/src/math/index.ts';
import type { DailyRecord, WeatherSeries } from '../../packages/engine/src/weather/index.ts';
import { climateDaysOf } from './station-record.ts';

/** Climate days in a row, year after year; NaN where unknown. The common form of a record and of generated days. */
export type DayTable = { years: number; min: Float64Array; max: Float64Array; rain: Float64Array };

export function tableOfSeries(series: WeatherSeries, firstYear = 0, years = series.days / 365): DayTable {
  const part = (values: Float64Array) => values.slice(firstYear * 365, (firstYear + years) * 365);
  return { years, min: part(series.tempMinC), max: part(series.tempMaxC), rain: part(series.rainMm) };
}

/** A record that begins on 1 January as a table; a last incomplete year is filled with NaN. */
export function tableOfRecord(record: DailyRecord): DayTable {
  const climateDays = climateDaysOf(record);
  if (climateDays[0] !== 0) throw new RangeError('table of record: expected a record from 1 January on');
  const places = climateDays.reduce((count, day) => count + (day < 0 ? 0 : 1), 0);
  const years = Math.ceil(places / 365);
  const blank = () => new Float64Array(years * 365).fill(Number.NaN);
  const table: DayTable = { years, min: blank(), max: blank(), rain: blank() };
  let into = 0;
  for (let at = 0; at < record.days; at++) {
    if (climateDays[at]! < 0) continue;
    if (record.known.tempMinC[at]) table.min[into] = record.tempMinC[at]!;
    if (record.known.tempMaxC[at]) table.max[into] = record.tempMaxC[at]!;
    if (record.known.rainMm[at]) table.rain[into] = record.rainMm[at]!;
    into++;
  }
  return table;
}

export type MonthStatistics = Record<string, number[]>;

const monthOfPlace = Int8Array.from({ length: 365 }, (_, day) => monthOfClimateDay(day));

/**
 * By month: spread of minimum and maximum about the month's mean of all years, lag-1 correlation (days of one month),
 * wet-day share, spread between years of monthly means. Whole year: mean wet and dry spells (cut by unknown days).
 */
export function recordStatistics(table: DayTable): MonthStatistics {
  const rows = Array.from({ length: 12 }, (_, month) => monthRow(table, month));
  const column = (name: keyof (typeof rows)[number]) => rows.map((row) => row[name]);
  return {
    'σ of minima, °C': column('sdMin'),
    'σ of maxima, °C': column('sdMax'),
    'lag-1 correlation of minima': column('lagMin'),
    'lag-1 correlation of maxima': column('lagMax'),
    'wet-day share': column('wet'),
    'SD between years of the mean minimum, °C': column('sdMeanMin'),
    'SD between years of the mean maximum, °C': column('sdMeanMax'),
    'mean wet spell, days': [meanSpell(table.rain, true)],
    'mean dry spell, days': [meanSpell(table.rain, false)],
  };
}

function monthRow({ years, min, max, rain }: DayTable, month: number) {
  const places: number[] = [];
  for (let at = 0; at < years * 365; at++) if (monthOfPlace[at % 365] === month) places.push(at);
  const known = (values: Float64Array) =>
    places.map((at) => values[at]!).filter((value) => !Number.isNaN(value));
  const rains = known(rain);
  const monthMeans = (values: Float64Array) => {
    const means: number[] = [];
    for (let year = 0; year < years; year++) {
      const days = places
        .filter((at) => Math.floor(at / 365) === year)
        .map((at) => values[at]!)
        .filter((v) => !Number.isNaN(v));
      if (days.length >= 25) means.push(mean(days));
    }
    return means;
  };
  return {
    sdMin: standardDeviation(known(min)),
    sdMax: standardDeviation(known(max)),
    lagMin: lagOne(min, places),
    lagMax: lagOne(max, places),
    wet: rains.filter((mm) => mm >= 0.1).length / rains.length,
    sdMeanMin: standardDeviation(monthMeans(min)),
    sdMeanMax: standardDeviation(monthMeans(max)),
  };
}

function lagOne(values: Float64Array, places: number[]): number {
  const centre = mean(places.map((at) => values[at]!).filter((value) => !Number.isNaN(value)));
  let products = 0;
  let before = 0;
  let after = 0;
  for (let at = 1; at < places.length; at++) {
    if (places[at]! - places[at - 1]! !== 1) continue;
    const x = values[places[at - 1]!]! - centre;
    const y = values[places[at]!]! - centre;
    if (Number.isNaN(x + y)) continue;
    products += x * y;
    before += x * x;
    after += y * y;
  }
  return products / Math.sqrt(before * after);
}

function meanSpell(rain: Float64Array, wet: boolean): number {
  let spells = 0;
  let days = 0;
  let inSpell = false;
  for (const mm of rain) {
    const is = !Number.isNaN(mm) && mm >= 0.1 === wet;
    if (is) days++;
    if (is && !inSpell) spells++;
    inSpell = is;
  }
  return days / spells;
}
